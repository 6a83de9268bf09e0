// Copies a correction note as it is shown, with the link to its check in the edition in force.

export function startNote(button) {
  button.addEventListener("click", () => copyNote(button));
}

function copyNote(button) {
  const note = button.closest(".correction").querySelector("[data-note]");
  copyWords(button, note, `${note.innerText.trim()}\n${linkTo(button.dataset.copyNote)}`);
}

/** Copies the words of a note; where copying is blocked, the note stands ready to be copied by hand. */
export async function copyWords(button, note, words) {
  try {
    await navigator.clipboard.writeText(words);
    button.textContent = button.dataset.copied;
  } catch {
    note.hidden = false;
    getSelection().selectAllChildren(note);
  }
}

/** The address of the check, its edition always written. */
function linkTo(path) {
  const link = new URL(path, location.href);
  const { edition } = document.documentElement.dataset;
  if (edition) link.searchParams.set("edition", edition);
  return link.href;
}
