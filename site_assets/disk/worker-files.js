/* Begins each worker of the disk edition: what the worker fetches or imports, its page brings (page-files.js). */
(() => {
  const page = new Promise((resolve) => {
    addEventListener("message", (event) => {
      event.stopImmediatePropagation(); // the worker's own messages come after this one
      resolve(event.data.files);
    }, { once: true });
  });

  function fileAsked(request) {
    const address = String(request.url ?? request);
    return new Promise((resolve, reject) => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = ({ data }) => (data ? resolve(data) : reject(new TypeError(`not on this disk: ${address}`)));
      page.then((files) => files.postMessage(address, [port2]));
    });
  }

  self.fetch = async (request) => {
    const { bytes, type } = await fileAsked(request);
    return new Response(bytes, { headers: { "content-type": type } });
  };

  /* Stands in the place of each `import(address)`. One after the other: Pyodide asks by itself, and in vain, for a script
     that it does not find run. */
  let last = Promise.resolve();
  self.importFile = (address) => {
    const asked = fileAsked(address);
    last = last.catch(() => {}).then(async () => {
      const { bytes } = await asked;
      return import(URL.createObjectURL(new Blob([bytes], { type: "text/javascript" })));
    });
    return last;
  };
})();
