/* The bar: what opens from it, and its buttons that press a part of the theme for the reader.
   A classic script that listens on the document: it works on a page opened as a file, and on every page that takes
   the place of another. */
(() => {
  const OPENER = "[aria-controls][aria-expanded]";
  const bar = () => document.querySelector("[data-bar]");
  const sheetOf = (opener) => document.getElementById(opener.getAttribute("aria-controls"));
  const openerNow = () => bar()?.querySelector("[aria-expanded=true]");

  const set = (opener, open) => {
    opener.setAttribute("aria-expanded", String(open));
    sheetOf(opener).hidden = !open;
  };

  const close = ({ focus = false } = {}) => {
    const opener = openerNow();
    if (!opener) return;
    set(opener, false);
    if (focus) opener.focus();
  };

  /* A button elsewhere on the page may open what the bar's own does. */
  const open = (pressed) => {
    const opener = bar().querySelector(`${OPENER}[aria-controls="${pressed.getAttribute("aria-controls")}"]`);
    const wasOpen = opener === openerNow();
    close();
    if (wasOpen) return;
    set(opener, true);
    sheetOf(opener).querySelector("[aria-current], [aria-pressed=true]")?.scrollIntoView({ block: "nearest" });
    if (opener !== pressed) opener.focus();
  };

  /* Which of the theme's choices is on: its label, which leads to the next, is the one that is shown. */
  const isOn = (choice) => Boolean(choice) && document.querySelector(`${choice} + label:not([hidden])`) !== null;

  const mark = () => {
    for (const button of document.querySelectorAll("[data-bar] [data-forwards][aria-pressed]")) {
      button.setAttribute("aria-pressed", String(isOn(button.dataset.forwards)));
    }
  };

  const forward = (button) => {
    const { forwards, back } = button.dataset;
    const to = back && button.getAttribute("aria-pressed") === "true" ? back : forwards;
    document.querySelector(to)?.click();
    mark();
  };

  document.addEventListener("click", ({ target }) => {
    const opener = target.closest?.("[data-bar] [aria-controls], .edition-strip [aria-controls]");
    const forwarding = target.closest?.("[data-bar] [data-forwards]");
    if (opener) open(opener);
    else if (forwarding) forward(forwarding);
    if (opener) return;
    const isInSheet = target.closest?.("[data-bar] .sheet");
    if (!isInSheet || target.closest("a[href], [data-choose-edition]")) close({ focus: Boolean(target.closest?.("[data-choose-edition]")) });
  });
  document.addEventListener("keydown", ({ key }) => { if (key === "Escape") close({ focus: true }); });
  // Who tabs out of a sheet has left it.
  document.addEventListener("focusin", ({ target }) => {
    const opener = openerNow();
    if (opener && target !== opener && !sheetOf(opener).contains(target)) close();
  });
  document.addEventListener("DOMContentLoaded", () => {
    mark();
    document.addEventListener("change", () => setTimeout(mark));
  });
  document.addEventListener("page:started", mark);
})();
