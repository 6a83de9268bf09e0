/* Makes the paper complete: the day, the full link with its edition, and every closed detail opened.
   A classic script, so that a page opened as a file prints whole too. */
(() => {
  const openedForPrint = new Set();

  /** The address that gives this page again, its edition always written. */
  const pageLink = () => {
    const url = new URL(location.href);
    const { edition } = document.documentElement.dataset;
    if (edition) url.searchParams.set("edition", edition);
    return url.href;
  };

  addEventListener("beforeprint", () => {
    const today = new Date();
    for (const day of document.querySelectorAll("[data-print-day]")) {
      day.dateTime = today.toISOString();
      day.textContent = today.toLocaleDateString(document.documentElement.lang, { dateStyle: "long" });
    }
    for (const link of document.querySelectorAll("[data-print-link]")) link.textContent = pageLink();
    for (const details of document.querySelectorAll("main article details:not([open])")) {
      details.open = true;
      openedForPrint.add(details);
    }
  });

  addEventListener("afterprint", () => {
    for (const details of openedForPrint) details.open = false;
    openedForPrint.clear();
  });
})();
