// The buttons that an answer brings.

import { copyWords } from "./notes.js";

export async function pressAction({ target }, { state, stop, finish }) {
  const action = target.closest("[data-action]")?.dataset.action;
  if (action === "print") print();
  if (action === "stop") stop();
  if (action === "finish") finish();
  if (action === "copy-note") copyNote(target);
  if (action === "copy-link") {
    try {
      await navigator.clipboard.writeText(location.href);
      target.textContent = state.dataset.copied;
    } catch {
      state.textContent = `${state.dataset.copyYourself} ${location.href}`;
    }
  }
}

/** Copies the answer's note with the link that restores it. */
function copyNote(button) {
  const note = button.closest("section").querySelector("[data-answer-note]");
  copyWords(button, note, `${note.textContent}\n${location.href}`);
}
