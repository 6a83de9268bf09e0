/* Enter in a field asks, in Safari's engine too: there an open list of suggestions takes the key to itself.
   A classic script, so that a press before the page's parts have started is kept (unanswered.js). */
(() => {
  let field; // with suggestions, in which Enter was pressed and nothing came of it yet
  let typed;

  addEventListener("keydown", ({ key, isComposing, target }) => {
    field = key === "Enter" && !isComposing && target.list && target.form ? target : undefined;
    typed = target.value;
  });
  addEventListener("submit", () => { field = undefined; });
  addEventListener("keyup", ({ key, target }) => {
    // A suggestion that Enter chose is another value; then the reader goes on.
    if (key === "Enter" && field && field === target && field.value === typed) field.form.querySelector("[type=submit]")?.click();
    field = undefined;
  });
})();
