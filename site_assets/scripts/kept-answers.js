// The last answers of this tab, to be shown at once on coming back and replaced when they are worked out again.

const INDEX = "kept-answers";
const MOST = 20; // some 10 kB each

// The name of the files that answered goes along: what other rules answered is never shown.
const keyOf = (form, query, files) => `${INDEX} ${form.dataset.calculator}?${new URLSearchParams(query)} ${files}`;

/** Whether anything was answered in this tab. */
export function hasKeptAnswers() {
  try {
    return sessionStorage.getItem(INDEX) !== null;
  } catch {
    return false;
  }
}

/** The HTML that these files answered to a query in this tab, or "". */
export function keptAnswer(form, query, files) {
  try {
    return sessionStorage.getItem(keyOf(form, query, files)) ?? "";
  } catch {
    return "";
  }
}

export function keepAnswer(form, query, files, html) {
  const key = keyOf(form, query, files);
  try {
    const kept = JSON.parse(sessionStorage.getItem(INDEX) ?? "[]").filter((other) => other !== key);
    for (const old of kept.splice(0, kept.length + 1 - MOST)) sessionStorage.removeItem(old);
    sessionStorage.setItem(INDEX, JSON.stringify([...kept, key]));
    sessionStorage.setItem(key, html);
  } catch {
    // Storage is blocked or full: coming back then waits for the answer.
  }
}
