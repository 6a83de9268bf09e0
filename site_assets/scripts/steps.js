// Follows the current through a drawing, one step a press: the stretch, its number, and its sentence of the text twin.

export function startSteps(controls) {
  const figure = controls.closest("figure.drawing");
  const sentences = [...figure.querySelectorAll(".drawing-twin > li")];
  const [back, on] = controls.querySelectorAll("[data-step-by]");
  const told = controls.querySelector("p");
  const start = on.textContent;
  let step = 0; // none is shown

  const show = () => {
    for (const part of figure.querySelectorAll(".path-step, .step-mark")) {
      const own = Number(part.id.slice(part.id.lastIndexOf("-") + 1));
      part.classList.toggle("reached", own <= step);
      part.classList.toggle("now", own === step);
    }
    sentences.forEach((sentence, place) => sentence.toggleAttribute("aria-current", place + 1 === step));
    told.textContent = step ? `${step}. ${sentences[step - 1].textContent}` : "";
    on.textContent = step ? on.dataset.later : start;
    back.disabled = step === 0;
    on.disabled = step === sentences.length;
  };

  controls.addEventListener("click", ({ target }) => {
    const by = target.closest("[data-step-by]")?.dataset.stepBy;
    if (!by) return;
    step = Math.min(sentences.length, Math.max(0, step + Number(by)));
    show();
  });
  controls.hidden = false;
  show();
}
