// The last answers of this tab, to be shown at once on coming back and replaced when they are worked out again.

const INDEX = "kept-answers";
const MOST = 20; // some 10 kB each

// What a page says of its files goes along: another version never shows what this one answered.
const keyOf = ({ calculator, runtime }, query) => `${INDEX} ${calculator}?${new URLSearchParams(query)} ${runtime}`;

/** The HTML that was answered to a query in this tab, or "". */
export function keptAnswer(form, query) {
  try {
    return sessionStorage.getItem(keyOf(form.dataset, query)) ?? "";
  } catch {
    return "";
  }
}

export function keepAnswer(form, query, html) {
  const key = keyOf(form.dataset, query);
  try {
    const kept = JSON.parse(sessionStorage.getItem(INDEX) ?? "[]").filter((other) => other !== key);
    for (const old of kept.splice(0, kept.length + 1 - MOST)) sessionStorage.removeItem(old);
    sessionStorage.setItem(INDEX, JSON.stringify([...kept, key]));
    sessionStorage.setItem(key, html);
  } catch {
    // Storage is blocked or full: coming back then waits for the answer.
  }
}
