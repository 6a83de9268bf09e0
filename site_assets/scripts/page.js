// Brings the calculators, the drawings, the notes and the offline panel of a page to life. The page reads without it.

import { startCalculator } from "./calculator.js";
import { startCharts } from "./chart.js";
import { startMany } from "./many.js";
import { openTarget } from "./fold.js";
import { startLostPage } from "./lost-page.js";
import { startNote } from "./notes.js";
import { startOffline } from "./offline.js";
import { startScene } from "./scene.js";
import { startSteps } from "./steps.js";


/** One part that fails leaves the others alive, and what failed still tells so when it is pressed (unanswered.js). */
function start(selector, startPart) {
  for (const part of document.querySelectorAll(selector)) {
    try {
      startPart(part);
      part.dataset.started = "";
    } catch (error) {
      reportError(error);
    }
  }
}

start("form.calculator", startCalculator);
start("[data-many]", startMany);
start("[data-scene]", startScene);
start("[data-copy-note]", startNote);
start(".drawing-steps", startSteps);
start("[data-lost-page]", startLostPage);
start("[data-offline]", startOffline);
start("body", startCharts);
start("body", openTarget);
addEventListener("hashchange", openTarget);
document.dispatchEvent(new Event("page:started"));
