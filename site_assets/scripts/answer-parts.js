// An answer that comes in parts: each holds all that was there before, so only what differs is put in its place. What
// is read, opened or has the focus stays. The rest can be stopped, and an answer that was stopped says so.

const UNFINISHED = "[data-unfinished]";

/** Shows `html` in the place of `before`, which `place` shows now, also where other scripts have added to it. */
export function showChanges(place, before, html) {
  const [then, now] = [treeOf(before), treeOf(html)];
  if (!now.querySelector(UNFINISHED)) {
    const ended = place.querySelector(UNFINISHED);
    const hadFocus = ended?.contains(document.activeElement);
    for (const each of [ended, then.querySelector(UNFINISHED)]) each?.remove();
    if (hadFocus) place.querySelector("section")?.focus({ preventScroll: true });
  }
  update(place, then, now);
}

/** Says of the answer shown that it stays unfinished, and offers to finish it. */
export function showStopped(place) {
  const shown = place.querySelector(UNFINISHED);
  if (!shown) return;
  const [stop, finish] = ["stop", "finish"].map((action) => shown.querySelector(`[data-action=${action}]`));
  const hadFocus = document.activeElement === stop;
  shown.querySelector("p").textContent = shown.dataset.stopped;
  shown.querySelector("progress").hidden = stop.hidden = true;
  finish.hidden = false;
  if (hadFocus) finish.focus({ preventScroll: true });
}

function treeOf(html) {
  const tree = document.createElement("template");
  tree.innerHTML = html;
  return tree.content;
}

function update(shown, then, now) {
  const [here, old, next] = [shown, then, now].map(({ childNodes }) => [...childNodes]);
  if (old.length !== next.length || here.length !== old.length) return shown.replaceChildren(...next);
  next.forEach((node, place) => {
    if (old[place].isEqualNode(node)) return;
    if (node.nodeType !== Node.ELEMENT_NODE || node.nodeName !== old[place].nodeName) return here[place].replaceWith(node);
    for (const name of node.getAttributeNames()) here[place].setAttribute(name, node.getAttribute(name));
    update(here[place], old[place], node);
  });
}
