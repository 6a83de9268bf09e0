/* Puts the edition in force on <html> before the page is painted:
     data-edition          the edition
     data-edition-chosen   "yes", or "no" while the handbook shows its own
     data-edition-from     "link", "memory" or "handbook"
   A classic script, because modules run after the first paint. */
(() => {
  const { editions: list, shown } = document.currentScript.dataset;
  const editions = list.split(" ");
  const page = document.documentElement;
  const KEY = "edition";

  const known = (edition) => (editions.includes(edition) ? edition : null);

  const assumedIn = (query) => (query.get("assumed") ?? "").split(",").filter(Boolean);

  const fromLink = () => {
    const query = new URLSearchParams(location.search);
    if (assumedIn(query).includes(KEY)) return null; // nobody chose it when the link was made
    const given = query.getAll(KEY);
    return given.length === 1 ? known(given[0]) : null;
  };

  // Storage can be blocked by the browser; the page then forgets and still works.
  const remembered = () => {
    try {
      return known(localStorage.getItem(KEY));
    } catch {
      return null;
    }
  };
  const remember = (edition) => {
    try {
      localStorage.setItem(KEY, edition);
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
    markButtons();
    return before !== undefined && before !== edition;
  };

  const announce = (edition) =>
    document.dispatchEvent(new CustomEvent("edition:change", { detail: { edition } }));

  const find = () => {
    const link = fromLink();
    const memory = remembered();
    if (link && link !== memory) return put(link, "link");
    return memory ? put(memory, "memory") : put(shown, "handbook");
  };

  // A link's edition would otherwise come back on reload, against the reader's choice.
  const correctLink = (edition) => {
    const url = new URL(location.href);
    if (!url.searchParams.has(KEY)) return;
    url.searchParams.set(KEY, edition);
    const assumed = assumedIn(url.searchParams).filter((name) => name !== KEY);
    if (assumed.length) url.searchParams.set("assumed", assumed.join(","));
    else url.searchParams.delete("assumed");
    history.replaceState(history.state, "", url);
  };

  find();

  document.addEventListener("DOMContentLoaded", () => markButtons());

  // A page that takes the place of this one has an address of its own, and another tab may have changed the memory.
  document.addEventListener("page:arriving", ({ detail }) => {
    find();
    markButtons(detail);
  });

  document.addEventListener("click", (event) => {
    const button = event.target.closest("[data-choose-edition]");
    if (!button) return;
    const edition = button.dataset.chooseEdition;
    remember(edition);
    correctLink(edition);
    put(edition, "memory");
    announce(edition);
  });

  // Going back can show a page kept from before the edition was changed elsewhere.
  addEventListener("pageshow", (event) => {
    if (event.persisted && find()) announce(page.dataset.edition);
  });
})();
