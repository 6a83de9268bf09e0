/* Begins each worker of the disk edition: what the worker fetches or imports, its page brings (page-files.js). */
(() => {
  const page = new Promise((resolve) => {
    addEventListener("message", (event) => {
      event.stopImmediatePropagation(); // the worker's own messages come after this one
      resolve(event.data.files);
    }, { once: true });
  });

  function asked(request, kind) {
    const address = String(request.url ?? request);
    return new Promise((resolve, reject) => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = ({ data }) => (data ? resolve(data) : reject(new TypeError(`not on this disk: ${address}`)));
      page.then((files) => files.postMessage({ address, kind }, [port2]));
    });
  }

  self.fetch = async (request) => {
    const { bytes, type } = await asked(request, "bytes");
    return new Response(bytes, { headers: { "content-type": type } });
  };

  /* Stands in the place of each `import(address)`; what a script makes stands in the scope. Chromium finds only a blob
     that the worker made, WebKit imports none and runs one that the page made. One after the other: Pyodide asks by
     itself, and in vain, for a script that it does not find run. */
  const runScript = self.importScripts.bind(self); // before the worker closes it (worker-reach.js)
  let last = Promise.resolve();
  self.importFile = (address) => {
    const script = asked(address, "script");
    last = last.catch(() => {}).then(async () => {
      const { bytes, url } = await script;
      const own = URL.createObjectURL(new Blob([bytes], { type: "text/javascript" }));
      await import(own).catch(() => runScript(url));
      return self;
    });
    return last;
  };
})();
