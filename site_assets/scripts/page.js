// Brings the calculators, the drawings, the notes and the offline panel of a page to life. The page reads without it.

import { startGlance } from "./at-a-glance.js";
import { startCalculator } from "./calculator.js";
import { startCharts } from "./chart.js";
import { startMany } from "./many.js";
import { openTarget } from "./fold.js";
import { startListFilter } from "./list-filter.js";
import { tellLostAnchor } from "./lost-anchor.js";
import { startLostPage } from "./lost-page.js";
import { startNote } from "./notes.js";
import { startOffline } from "./offline.js";
import { startSwaps } from "./page-swap.js";
import { startScene } from "./scene.js";
import { followOldSearch, startSearch } from "./search.js";
import { startSnapshots } from "./snapshot.js";
import { startSteps } from "./steps.js";

let page = new AbortController(); // ends what the parts of the page that is shown listen to and wait for

/** One part that fails leaves the others alive, and what failed still tells so when it is pressed (unanswered.js). */
function start(selector, startPart) {
  for (const part of document.querySelectorAll(selector)) {
    try {
      startPart(part, page.signal);
      part.dataset.started = "";
    } catch (error) {
      reportError(error);
    }
  }
}

function startPage() {
  start("[data-glance]", startGlance); // it hears the first answer
  start("form.calculator", startCalculator);
  start("[data-many]", startMany);
  start("[data-scene]", startScene);
  start("[data-copy-note]", startNote);
  start(".drawing-steps", startSteps);
  start("[data-lost-page]", startLostPage);
  start("form[data-search]", startSearch);
  start("[data-list-filter]", startListFilter);
  start("[data-offline]", startOffline);
  start("body", startCharts);
  start("body", openTarget);
  start("body", tellLostAnchor);
  document.dispatchEvent(new Event("page:started"));
}

function leavePage() {
  page.abort();
  page = new AbortController();
}

followOldSearch();
startPage();
addEventListener("hashchange", openTarget);
addEventListener("hashchange", tellLostAnchor);
startSnapshots();
startSwaps({ startPage, leavePage });
