// Shows how far Python has started, in the words that the line carries.

export function showState(line, { state, part = 0 }, retry) {
  line.dataset.state = state;
  line.textContent = line.dataset[state].replace("{percent}", Math.round(part * 100));
  if (state === "late" || state === "failed") {
    const again = document.createElement("button");
    again.type = "button";
    again.className = "quiet";
    again.textContent = line.dataset.again;
    again.addEventListener("click", retry, { once: true });
    line.append(" ", again);
  }
}
