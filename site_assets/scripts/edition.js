/* Puts the edition in force on <html> before the page is painted:
     data-edition          the edition
     data-edition-chosen   "yes", or "no" while the handbook shows its own
     data-edition-from     "link", "memory" or "handbook"
     data-own-edition      the edition that the reader picked, or "none"
   A link's edition holds in this tab until it is closed or the reader picks one. The address always names the edition,
   so that whatever shares a page shares its edition too. A classic script: modules run after the first paint. */
(() => {
  const { editions: list, shown } = document.currentScript.dataset;
  const editions = list.split(" ");
  const page = document.documentElement;
  const KEY = "edition";
  const SEARCHED = ["h", "q"]; // the search's own parameters

  const known = (edition) => (editions.includes(edition) ? edition : null);

  const assumedIn = (query) => (query.get("assumed") ?? "").split(",").filter(Boolean);

  // What this script wrote into the address is no link; the entry of the history remembers it.
  const isWrittenHere = (edition) => history.state?.[KEY] === edition;

  const fromLink = () => {
    const query = new URLSearchParams(location.search);
    if (assumedIn(query).includes(KEY)) return null; // nobody chose it when the link was made
    const given = query.getAll(KEY);
    return given.length === 1 && !isWrittenHere(given[0]) ? known(given[0]) : null;
  };

  // Storage can be blocked by the browser; the page then forgets and still works.
  const read = (storage) => {
    try {
      return known(window[storage].getItem(KEY));
    } catch {
      return null;
    }
  };
  const keep = (storage, edition) => {
    try {
      if (edition) window[storage].setItem(KEY, edition);
      else window[storage].removeItem(KEY);
    } catch {
      /* this page keeps the choice in its attributes */
    }
  };

  const markButtons = (root = document) => {
    for (const button of root.querySelectorAll("[data-choose-edition]")) {
      button.setAttribute("aria-pressed", String(button.dataset.chooseEdition === page.dataset.edition));
    }
  };

  const put = (edition, from) => {
    const before = page.dataset.edition;
    page.dataset.edition = edition;
    page.dataset.editionChosen = from === "handbook" ? "no" : "yes";
    page.dataset.editionFrom = from;
    page.dataset.ownEdition = read("localStorage") ?? (from === "memory" ? edition : "none");
    markButtons();
    return before !== undefined && before !== edition;
  };

  const announce = (edition) =>
    document.dispatchEvent(new CustomEvent("edition:change", { detail: { edition } }));

  const find = () => {
    const link = fromLink();
    const memory = read("localStorage");
    if (link) keep("sessionStorage", link === memory ? null : link);
    const visit = read("sessionStorage");
    if (visit && visit !== memory) return put(visit, "link");
    return memory ? put(memory, "memory") : put(shown, "handbook");
  };

  /* Inputs in an address are an answer's, which names its own edition. */
  const holdsInputs = (query) => [...query.keys()].some((name) => ![KEY, "assumed", ...SEARCHED].includes(name));

  const write = (anew = false) => {
    const { edition, editionChosen } = page.dataset;
    const url = new URL(location.href);
    const query = url.searchParams;
    const isMistaken = query.has(KEY) && !known(query.get(KEY)); // the page says so
    if (!anew && (query.get(KEY) === edition || isMistaken || holdsInputs(query))) return;
    const assumed = assumedIn(query).filter((name) => name !== KEY);
    if (editionChosen === "no") assumed.push(KEY);
    query.set(KEY, edition);
    if (assumed.length) query.set("assumed", assumed.join(","));
    else query.delete("assumed");
    try {
      history.replaceState({ ...history.state, [KEY]: edition }, "", url);
    } catch {
      /* a browser that keeps the address as it is; the bar and print still say the edition */
    }
  };

  const choose = (edition) => {
    keep("localStorage", edition);
    keep("sessionStorage", null);
    put(edition, "memory");
    write(true);
    announce(edition);
  };

  find();
  write();

  document.addEventListener("DOMContentLoaded", () => markButtons());

  // A page that takes the place of this one has an address of its own, and another tab may have changed the memory.
  document.addEventListener("page:arriving", ({ detail }) => {
    find();
    write();
    markButtons(detail);
  });
  // A place on the page is another entry, and a form that is cleared clears its address.
  addEventListener("popstate", () => setTimeout(write));
  addEventListener("hashchange", () => setTimeout(write));
  document.addEventListener("reset", () => setTimeout(write));

  document.addEventListener("click", ({ target }) => {
    const button = target.closest?.("[data-choose-edition], [data-back-to]");
    if (button) choose(button.dataset.chooseEdition ?? button.dataset.backTo);
  });

  // Going back can show a page kept from before the edition was changed elsewhere.
  addEventListener("pageshow", (event) => {
    if (event.persisted && find()) announce(page.dataset.edition);
  });
})();
