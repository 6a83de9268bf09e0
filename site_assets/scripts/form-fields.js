// How the fields of a form stand: which count, which wait, which are wrong; and what their own buttons do.

import { controlsOf, enterInto, entryOf, fieldOf, labelOf, namesOf } from "./form-entries.js";

/** Shows the fields that count beside what is chosen, and how each stands. */
export function refreshFields(form) {
  // A choice that does not count stands at its default, on which others may depend.
  for (let again = true, rounds = 0; again && rounds < 3; rounds += 1) {
    again = false;
    for (const name of namesOf(form)) {
      const field = fieldOf(form, name);
      const hidden = !counts(form, field);
      if (field.hidden !== hidden) again = true;
      field.hidden = hidden;
    }
  }
  for (const name of namesOf(form)) fieldOf(form, name).dataset.state = stateOf(form, name);
}

function counts(form, field) {
  const conditions = Object.entries(JSON.parse(field.dataset.countsWith ?? "{}"));
  return conditions.every(([other, values]) => {
    const asked = fieldOf(form, other);
    return values.includes(asked.hidden ? asked.dataset.default ?? "" : entryOf(form, other));
  });
}

function stateOf(form, name) {
  const { dataset } = fieldOf(form, name);
  if (!form.querySelector(`#error-${name}`).hidden) return "wrong";
  if (!entryOf(form, name)) return "needed" in dataset || "unsettled" in dataset ? "waiting" : "optional";
  return "given" in dataset ? "filled" : "assumed";
}

/** The fields without which there is no answer, and those that only make it depend. */
export function waitingIn(form) {
  const waiting = namesOf(form).filter((name) => !fieldOf(form, name).hidden && !entryOf(form, name));
  const having = (key) => waiting.filter((name) => key in fieldOf(form, name).dataset);
  return { missing: having("needed"), unsettled: having("unsettled") };
}

/** Shows what to enter instead, in place; a field that someone is still typing in is not told yet. */
export function showFieldErrors(form, fix) {
  for (const name of namesOf(form)) {
    const words = fix[name];
    const line = form.querySelector(`#error-${name}`);
    line.textContent = words ?? "";
    line.hidden = !words;
    if (words) openTo(fieldOf(form, name));
    for (const input of controlsOf(form, name)) {
      if (words) input.setAttribute("aria-invalid", "true");
      else input.removeAttribute("aria-invalid");
    }
    fieldOf(form, name).dataset.state = stateOf(form, name);
  }
}

function openTo(field) {
  field.closest("details")?.setAttribute("open", "");
  field.hidden = false;
}

/** Brings a field into view between what lies over the page at its top and its bottom. */
export function bringField(form, name) {
  const field = fieldOf(form, name);
  if (!field) return;
  openTo(field);
  field.scrollIntoView({ block: "start" });
  const controls = controlsOf(form, name);
  (controls.find(({ checked }) => checked) ?? controls[0]).focus({ preventScroll: true });
}

/** What Python read beside a size goes to the fields that ask for it; what someone is typing in stays. */
export function takeApart(form, found) {
  const names = Object.keys(found);
  if (names.some((name) => controlsOf(form, name).includes(document.activeElement))) return;
  for (const name of names) {
    enterInto(form, name, found[name]);
    fieldOf(form, name).dataset.given = "";
  }
}

export function listOfLabels(form, names) {
  return names.map((name) => labelOf(form, name)).join(", ");
}

/** A field that someone touched, or a link gave, is given; what stands as the form came is assumed. */
export function markGiven({ target }) {
  const field = target.closest("[data-field]");
  if (field) field.dataset.given = "";
}

/** A slider writes into its field, which alone is sent. */
export function slide({ target }) {
  if (!target.dataset.slides) return;
  enter(target.form.elements[target.dataset.slides], `${target.value} ${target.dataset.unit}`);
}

export function stepNumber({ target }) {
  const step = target.closest("[data-step]");
  if (!step) return;
  const input = step.parentElement.querySelector("input");
  const [low, high] = [Number(input.dataset.low), Number(input.dataset.high)];
  const now = Number.parseInt(input.value, 10);
  const next = Number.isNaN(now) ? low : now + Number(step.dataset.step);
  enter(input, Math.min(high, Math.max(low, next)));
}

/** “Don't know” writes into the field beside it, as a slider does. */
export function leaveOpen({ target }) {
  const button = target.closest("[data-leaves-open]");
  if (!button) return;
  enter(button.form.elements[button.dataset.leavesOpen], button.dataset.value);
}

/** Writes into a field as if it were typed, so that an answer to what stood there is marked. */
function enter(field, value) {
  field.value = value;
  for (const kind of ["input", "change"]) field.dispatchEvent(new Event(kind, { bubbles: true }));
}
