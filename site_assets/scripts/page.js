// Brings the calculators and the offline panel of a page to life. The page reads without it.

import { startCalculator } from "./calculator.js";
import { startMany } from "./many.js";
import { openTarget } from "./fold.js";
import { startOffline } from "./offline.js";

for (const form of document.querySelectorAll("form.calculator")) startCalculator(form);
for (const part of document.querySelectorAll("[data-many]")) startMany(part);
addEventListener("hashchange", openTarget);
openTarget();
const panel = document.querySelector("[data-offline]");
if (panel) startOffline(panel);
