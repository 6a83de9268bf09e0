/* How a page of the disk edition gets what the other pages fetch. Opened from a disk a browser fetches nothing, loads no
   module and starts no worker of an address, but it runs classic scripts. So each file that a script asks for stands as
   `<its address>.js`, a script that hands it over, compressed and written as text, and workers start from their code
   (handbookWorkers, in workers.js). The policy of the page lets nothing else in. */
(() => {
  const TYPES = { json: "application/json", wasm: "application/wasm" };
  const handedOver = new WeakMap(); // script element -> text of its file
  const BrowserWorker = self.Worker;

  self.handbookFile = (text) => { handedOver.set(document.currentScript, text); };

  function fileAt(address) {
    return new Promise((resolve, reject) => {
      const script = document.createElement("script");
      const missing = () => reject(new TypeError(`not on this disk: ${address}`));
      script.src = `${address}.js`;
      script.onerror = missing;
      script.onload = () => {
        script.remove();
        if (handedOver.has(script)) resolve(unpacked(handedOver.get(script)));
        else missing();
      };
      document.head.append(script);
    });
  }

  function unpacked(text) {
    const signs = atob(text);
    const packed = new Uint8Array(signs.length);
    for (let at = 0; at < signs.length; at += 1) packed[at] = signs.charCodeAt(at);
    const bytes = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
    return new Response(bytes).arrayBuffer(); // rejects what does not come whole
  }

  async function fileAsked(request) {
    const address = new URL(request.url ?? request, location);
    const bytes = await fileAt(address.href);
    return { bytes, type: TYPES[address.pathname.split(".").pop()] ?? "application/octet-stream" };
  }

  self.fetch = async (request) => {
    const { bytes, type } = await fileAsked(request);
    return new Response(bytes, { headers: { "content-type": type } });
  };

  function addressOf(...code) {
    return URL.createObjectURL(new Blob(code, { type: "text/javascript" }));
  }

  /* A worker of the code that is named by an address; what it asks for in turn, this page brings (worker-files.js). */
  self.Worker = class extends BrowserWorker {
    constructor(address) {
      const { href, pathname } = new URL(address, location);
      const named = `self.handbookAddress = ${JSON.stringify(href)};\n`; // its own would be that of the blob
      const code = self.handbookWorkers[pathname.split("/").pop()];
      super(addressOf(named, code));
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = ({ data: { address: asked, kind }, ports: [reply] }) => fileAsked(asked).then((file) => {
        const url = kind === "script" ? addressOf(file.bytes) : undefined;
        reply.postMessage({ ...file, url }, [file.bytes]);
      }).catch(() => reply.postMessage(undefined));
      this.postMessage({ files: port2 }, [port2]);
    }
  };
})();
