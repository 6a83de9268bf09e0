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

  /* Stands in the place of each `import(address)`. */
  self.importFile = async (address) => {
    const { bytes } = await fileAsked(address);
    return import(URL.createObjectURL(new Blob([bytes], { type: "text/javascript" })));
  };
})();
