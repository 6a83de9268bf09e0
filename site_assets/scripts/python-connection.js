// One worker that runs Python, and the questions that it has not answered yet.

/* A question is { message, resolve, reject, onPart }. `onNews` gets what the worker tells unasked. */
export function openConnection(start, onNews) {
  const pending = new Map();
  let nextId = 1;
  const script = new URL("calculator-worker.js", import.meta.url);
  const worker = new Worker(script, { type: "module" });

  worker.onmessage = ({ data }) => {
    const question = pending.get(data.id);
    if (data.part) {
      if (!question) return;
      question.begun = true;
      question.onPart(data.part);
    } else if (data.reply) {
      question?.resolve(data.reply);
      pending.delete(data.id);
    } else {
      onNews(data);
    }
  };
  worker.onerror = () => onNews({ missing: script.href });
  worker.postMessage({ start });

  return {
    ask(question) {
      question.id = nextId++;
      pending.set(question.id, question);
      worker.postMessage({ id: question.id, ...question.message });
    },
    stop: ({ id }) => pending.has(id) && worker.postMessage({ id, stop: true }),
    /** Ends the worker and returns what it has not answered. */
    close() {
      worker.terminate();
      return [...pending.values()];
    },
  };
}
