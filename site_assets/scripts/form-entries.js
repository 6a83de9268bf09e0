// What stands in a form's fields: read as a query, filled from one.

export function namesOf(form) {
  return [...form.querySelectorAll("[data-field]")].map((field) => field.dataset.field);
}

export function fieldOf(form, name) {
  return form.querySelector(`[data-field="${name}"]`);
}

export function controlsOf(form, name) {
  return [...form.querySelectorAll(`[name="${name}"]`)];
}

export function labelOf(form, name) {
  return fieldOf(form, name).querySelector("legend, label").textContent;
}

/** What was entered in a field, "" for nothing. */
export function entryOf(form, name) {
  return new FormData(form).getAll(name).join(",").trim();
}

/** The question: what nobody chose is unknown where the field takes that; what does not count is left out if it may be. */
export function queryOf(form) {
  const asked = namesOf(form).filter((name) => isAsked(fieldOf(form, name)));
  const typed = new FormData(form);
  const entry = (name) => typed.getAll(name).join(",") || openValueOf(fieldOf(form, name));
  const query = new URLSearchParams(asked.map((name) => [name, entry(name)]));
  const leftOut = asked.filter((name) => !("given" in fieldOf(form, name).dataset));
  if (leftOut.length) query.set("assumed", leftOut.join(","));
  return inForce(query.toString());
}

/** What does not count is left out, but for what no link may leave out. */
function isAsked({ hidden, dataset }) {
  return !hidden || ("needed" in dataset && !("default" in dataset));
}

/** What stands for a field that is empty: that nobody knows, where it is a choice or does not count. */
function openValueOf(field) {
  return field.dataset.unsettled ?? (field.hidden ? field.querySelector("[data-leaves-open]")?.dataset.value : "") ?? "";
}

/** Everything as it stands, for coming back to the page in this tab. */
export function entriesOf(form) {
  const typed = new FormData(form);
  const given = givenIn(form);
  const entries = new URLSearchParams(namesOf(form).map((name) => [name, typed.getAll(name).join(",")]));
  entries.set("assumed", namesOf(form).filter((name) => !given.includes(name)).join(","));
  return entries.toString();
}

export function givenIn(form) {
  return namesOf(form).filter((name) => "given" in fieldOf(form, name).dataset);
}

/** The query with the edition that the reader chose, where it names none. */
export function inForce(query) {
  const { edition, editionChosen } = document.documentElement.dataset;
  if (editionChosen !== "yes" || new URLSearchParams(query).has("edition")) return query;
  return `edition=${edition}&${query.replace(/^\?/, "")}`;
}

/** What a link leaves out stands at its default there, also where the browser has put back what was typed before. */
export function fillWhole(form, query, kept = []) {
  for (const name of namesOf(form)) {
    if (kept.includes(name)) continue;
    const { dataset } = fieldOf(form, name);
    enterInto(form, name, dataset.default ?? "");
  }
  fill(form, new URLSearchParams(query), kept);
}

/** Fields named in `kept` stay as they are. */
export function fill(form, query, kept = []) {
  const leftOut = (query.get("assumed") ?? "").split(",");
  for (const name of namesOf(form)) {
    if (kept.includes(name)) continue;
    const field = fieldOf(form, name);
    delete field.dataset.given;
    const named = [name, ...formerly(field)].find((each) => query.has(each));
    if (!named) continue;
    const value = valueNow(field, query.get(named));
    if (!leftOut.includes(name) && value) field.dataset.given = "";
    enterInto(form, name, value);
    const part = field.closest("details");
    if (part && value !== (field.dataset.default ?? "")) part.open = true;
  }
}

/** Puts a value into the controls of a field; one that a list lacks leaves it empty, and the error says what came. */
export function enterInto(form, name, value) {
  for (const input of controlsOf(form, name)) {
    if (input.type === "radio") input.checked = input.value === value;
    else if (input.type === "checkbox") input.checked = value.split(",").includes(input.value);
    else input.value = value;
  }
}

function formerly(element) {
  return element.dataset.formerly?.split(" ") ?? [];
}

/** Choices that an earlier link names as they were called then, by the values they have now. */
function valueNow(field, value) {
  const renamed = [...field.querySelectorAll("[data-formerly]")];
  if (renamed.length === 0) return value;
  const now = (each) => renamed.find((choice) => formerly(choice).includes(each.trim()))?.value ?? each;
  return value.split(",").map(now).join(",");
}
