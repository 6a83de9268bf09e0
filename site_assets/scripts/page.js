// Brings the calculators, the drawings, the notes and the offline panel of a page to life. The page reads without it.

import { startCalculator } from "./calculator.js";
import { startCharts } from "./chart.js";
import { startMany } from "./many.js";
import { openTarget } from "./fold.js";
import { startNotes } from "./notes.js";
import { startOffline } from "./offline.js";
import { startScene } from "./scene.js";
import { startSteps } from "./steps.js";

for (const form of document.querySelectorAll("form.calculator")) startCalculator(form);
for (const part of document.querySelectorAll("[data-many]")) startMany(part);
addEventListener("hashchange", openTarget);
openTarget();
for (const figure of document.querySelectorAll("[data-scene]")) startScene(figure);
startCharts();
startSteps();
startNotes();
const panel = document.querySelector("[data-offline]");
if (panel) startOffline(panel);
