// What was typed on a page is there again when the same tab comes back to it: an update loads every open page again.

let openedAnew = performance.getEntriesByType("navigation")[0]?.type === "navigate";

/** How the page that comes next was reached: by a link, or back to what was left. */
export function setOpenedAnew(anew) {
  openedAnew = anew;
}

export const cameBack = () => !openedAnew;

/** The place of a text of this page; `get` gives "" on a page opened anew, as inputs of an earlier job must not stand there. */
export function textOfPage(name) {
  const key = `${name} ${location.pathname}`;
  return {
    set(text) {
      try {
        sessionStorage.removeItem(key);
        if (text) sessionStorage.setItem(key, text);
      } catch {
        // Storage is blocked, or this is more than it takes.
      }
    },
    get() {
      if (openedAnew) return "";
      try {
        return sessionStorage.getItem(key) ?? "";
      } catch {
        return "";
      }
    },
  };
}
