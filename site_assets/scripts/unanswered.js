/* A press that no script answers is told why, in the words that the page carries for it, and a link's
   answer that cannot come is told too. A press while the page loads is kept, and pressed again for the reader
   once its part has started; what is entered by then is marked as given. A classic script in plain old words:
   opened as a file, in an old browser or on a bad link the modules of a page do not run, and this must. */
(function () {
  var searchOpener = document.currentScript.getAttribute("data-search-opener");
  var isForDisk = document.currentScript.hasAttribute("data-disk");
  var NEED_SCRIPTS = "form.calculator, [data-many], [data-scene], [data-copy-note]";
  var loaded = false;
  var started = false;
  var early = []; // what was pressed before the page's parts started
  var lacking = false; // a script or style did not come whole

  function why() {
    if (location.protocol === "file:" && !isForDisk) return "file";
    return loaded || started ? "failed" : "loading";
  }

  function tell(after, reason) {
    var words = document.querySelector('[data-unanswered-words="' + reason + '"]');
    var told = after.nextElementSibling;
    if (!told || !told.hasAttribute("data-unanswered")) {
      told = document.createElement("div");
      told.className = "unanswered";
      told.setAttribute("data-unanswered", "");
      told.setAttribute("role", "alert");
      after.parentNode.insertBefore(told, after.nextSibling);
    }
    told.textContent = "";
    told.appendChild(document.importNode(words.content, true));
    return told;
  }

  function answer(pressed) {
    tell(pressed, why()).scrollIntoView({ block: "nearest" });
  }

  function press(event) {
    var place = document.querySelector("[data-unanswered-place]");
    if (why() === "file" && place && event.target.closest(searchOpener)) {
      event.preventDefault(); // a search without its index would lie over the words
      return answer(place);
    }
    var pressed = event.target.closest("button:not([type=reset]), [data-press]");
    var part = pressed && pressed.closest(NEED_SCRIPTS);
    if (!part || part.hasAttribute("data-started")) return;
    event.preventDefault();
    if (why() === "loading") keep(pressed);
    answer(placeOf(pressed));
  }

  function placeOf(pressed) {
    return pressed.closest(".form-actions, .stepper, figure") || pressed;
  }

  /* A number may be stepped twice; an answer is asked for once. */
  function keep(pressed) {
    if (pressed.type !== "submit" || early.indexOf(pressed) < 0) early.push(pressed);
  }

  function enter(event) {
    var field = event.target.closest("form.calculator:not([data-started]) [data-field]");
    if (field) field.setAttribute("data-given", "");
  }

  function submit(event) {
    var form = event.target;
    if (!form.matches("form.calculator") || form.hasAttribute("data-started")) return;
    event.preventDefault(); // else the browser would leave with what was typed
    if (why() === "loading") keep(form.querySelector("button[type=submit]"));
    answer(form.querySelector(".form-actions"));
  }

  function clear(event) {
    var form = event.target;
    if (!form.matches("form.calculator:not([data-started])")) return;
    early = early.filter(function (pressed) { return !form.contains(pressed); });
    Array.prototype.forEach.call(form.querySelectorAll("[data-given]"), function (field) {
      field.removeAttribute("data-given");
    });
  }

  /* What has not started by now never will. Beside a link's inputs the example could be taken for their answer. */
  function load() {
    loaded = true;
    var place = document.querySelector("[data-unanswered-place]");
    if (!place) return;
    var whole = document.querySelector("[data-page-end]");
    lacking = lacking || Array.prototype.some.call(document.styleSheets, isCut);
    if (started && whole && !lacking) return;
    fetchAnew();
    tell(place, !whole ? "cut" : started ? "lacking" : why());
    var form = document.querySelector("form.calculator");
    early.splice(0).forEach(function (pressed) { tell(placeOf(pressed), why()); });
    if (started || !form || !asksSomething(form)) return;
    form.parentElement.classList.add("asked");
    tell(document.querySelector("[data-result]") || form, why());
  }

  function isCut(sheet) {
    if (!sheet.href || sheet.href.indexOf("/kit/") < 0) return false;
    try {
      var last = sheet.cssRules[sheet.cssRules.length - 1];
      return !last || last.selectorText !== ".end-of-sheet";
    } catch (error) {
      return false; // opened as a file
    }
  }

  /* A browser may keep what a bad network sent in the place of a script, and not ask again on a reload. */
  function fetchAnew() {
    if (why() === "file" || !window.fetch) return;
    performance.getEntriesByType("resource").forEach(function (each) {
      if (each.name.indexOf("/kit/") > 0) fetch(each.name, { cache: "reload" }).catch(function () {});
    });
  }

  function asksSomething(form) {
    var names = Array.from(new URLSearchParams(location.search).keys());
    return names.some(function (name) { return form.elements[name]; });
  }

  function start() {
    started = true;
    Array.prototype.forEach.call(document.querySelectorAll("[data-unanswered]"), function (told) { told.remove(); });
    // A part that failed tells so now. What is drawn has no click() of its own.
    early.splice(0).forEach(function (pressed) {
      pressed.dispatchEvent(new MouseEvent("click", { bubbles: true, cancelable: true }));
    });
  }

  addEventListener("error", function (event) {
    var cut = event.error instanceof SyntaxError;
    if (cut || (event.target !== window && event.target.matches("script, link"))) lacking = true;
  }, true);
  document.addEventListener("click", press, true);
  document.addEventListener("submit", submit, true);
  document.addEventListener("input", enter, true);
  document.addEventListener("change", enter, true);
  document.addEventListener("reset", clear, true);
  document.addEventListener("page:started", start);
  addEventListener("load", load);
})();
