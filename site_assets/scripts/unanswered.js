/* A press that no script answers is told why, in the words that the page carries for it, and a link's
   answer that cannot come is told too. A classic script in plain old words: opened as a file, in an old
   browser or on a bad link the modules of a page do not run, and this must. */
(function () {
  var searchOpener = document.currentScript.getAttribute("data-search-opener");
  var isForDisk = document.currentScript.hasAttribute("data-disk");
  var NEED_SCRIPTS = "form.calculator, [data-many], [data-scene], [data-copy-note]";
  var loaded = false;
  var started = false;

  function why() {
    if (location.protocol === "file:" && !isForDisk) return "file";
    return loaded ? "failed" : "loading";
  }

  function tell(after) {
    var told = after.nextElementSibling;
    if (!told || !told.hasAttribute("data-unanswered")) {
      told = document.createElement("div");
      told.className = "unanswered";
      told.setAttribute("data-unanswered", "");
      told.setAttribute("role", "alert");
      after.parentNode.insertBefore(told, after.nextSibling);
    }
    told.textContent = "";
    told.appendChild(document.importNode(document.querySelector('[data-unanswered-words="' + why() + '"]').content, true));
    return told;
  }

  function answer(pressed) {
    tell(pressed).scrollIntoView({ block: "nearest" });
  }

  function press(event) {
    var place = document.querySelector("[data-unanswered-place]");
    if (why() === "file" && place && event.target.closest(searchOpener)) return answer(place);
    var pressed = event.target.closest("button:not([type=reset]), [data-press]");
    var part = pressed && pressed.closest(NEED_SCRIPTS);
    if (!part || part.hasAttribute("data-started")) return;
    event.preventDefault();
    answer(pressed.closest(".form-actions, .stepper, figure") || pressed);
  }

  function submit(event) {
    var form = event.target;
    if (!form.matches("form.calculator") || form.hasAttribute("data-started")) return;
    event.preventDefault(); // else the browser would leave with what was typed
    answer(form.querySelector(".form-actions"));
  }

  /* What has not started by now never will. Beside a link's inputs the example could be taken for their answer. */
  function load() {
    loaded = true;
    if (started) return;
    var form = document.querySelector("form.calculator");
    tell(document.querySelector("[data-unanswered-place]"));
    if (!form || !asksSomething(form)) return;
    form.parentElement.classList.add("asked");
    tell(document.querySelector("[data-result]"));
  }

  function asksSomething(form) {
    var names = Array.from(new URLSearchParams(location.search).keys());
    return names.some(function (name) { return form.elements[name]; });
  }

  function forget() {
    started = true;
    Array.prototype.forEach.call(document.querySelectorAll("[data-unanswered]"), function (told) { told.remove(); });
  }

  document.addEventListener("click", press, true);
  document.addEventListener("submit", submit, true);
  document.addEventListener("page:started", forget);
  addEventListener("load", load);
})();
