// What was typed on a page is there again when the same tab loads it again: an update does so with every open page.

const placeOf = (name) => `${name} ${location.pathname}`;

export function putAway(name, text) {
  try {
    sessionStorage.removeItem(placeOf(name));
    if (text) sessionStorage.setItem(placeOf(name), text);
  } catch {
    // Storage is blocked, or this is more than it takes.
  }
}

/** "" on a page that was opened anew: inputs of an earlier job must not stand in its form. */
export function takeBack(name) {
  if (performance.getEntriesByType("navigation")[0]?.type === "navigate") return "";
  try {
    return sessionStorage.getItem(placeOf(name)) ?? "";
  } catch {
    return "";
  }
}
