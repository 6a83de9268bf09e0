// Copies a correction note as it is shown, with the link to its check in the edition in force.

export function startNotes() {
  for (const button of document.querySelectorAll("[data-copy-note]")) {
    button.addEventListener("click", () => copyNote(button));
  }
}

async function copyNote(button) {
  const note = button.closest(".correction").querySelector("[data-note]");
  const words = `${note.innerText.trim()}\n${linkTo(button.dataset.copyNote)}`;
  try {
    await navigator.clipboard.writeText(words);
    button.textContent = button.dataset.copied;
  } catch {
    getSelection().selectAllChildren(note); // where copying is blocked, the note stands ready to be copied by hand
  }
}

/** The address of the check, its edition always written. */
function linkTo(path) {
  const link = new URL(path, location.href);
  const { edition } = document.documentElement.dataset;
  if (edition) link.searchParams.set("edition", edition);
  return link.href;
}
