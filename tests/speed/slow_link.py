"""The first answer of a first visit over 400 kbit/s and 400 ms, from a host that compresses and from a plain one."""

import threading
import time
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer

import brotli

from site_assets.build.host_headers import type_of
from site_assets.build.serve import file_in
from site_assets.setup.paths import SITE
from tests.speed.browser import started_browser
from tests.speed.row import Row

BYTES_A_SECOND = 50_000
DELAY = 0.4  # s, from a request to the first byte
PIECE = 2_000  # bytes; all that is on its way shares the link in turns
COMPRESSED = (".html", ".js", ".mjs", ".css", ".json", ".wasm", ".zip", ".svg", ".webmanifest", ".toml")
LINKED = "calculators/main-bonding-jumper.html?edition=2023&conductor=500kcmil&sets=2"


def rows():
    """Yield the seconds from opening a link to its answer."""
    with started_browser() as browser:
        for host, compresses, budget in (("with brotli", True, 75), ("on a plain host", False, 125)):
            link = Link(compresses)
            page = browser.new_context().new_page()
            started = time.perf_counter()
            page.goto(f"{link.address}{LINKED}", wait_until="commit")
            page.locator("main h1").wait_for(timeout=60_000)
            title = time.perf_counter() - started
            page.locator("[data-result] .answer").wait_for(timeout=400_000)
            answer = time.perf_counter() - started
            told = f"title seen after {title:.1f} s; {link.sent / 1e6:.2f} MB until then"
            yield Row(f"first answer at 400 kbit/s and 400 ms, {host}", answer, "s", budget, told)
            page.context.close()
            link.shutdown()


class Link(ThreadingHTTPServer):
    """Serves the site over a slow link."""

    daemon_threads = True

    def __init__(self, compresses: bool):
        super().__init__(("127.0.0.1", 0), Answer)
        self.compresses = compresses
        self.turn = threading.Lock()
        self.free = 0.0  # when the link has sent all that was given to it
        self.sent = 0
        self.ready = {}
        if compresses:  # before the clock runs, as a host that keeps what it compressed
            self.ready = {
                file: brotli.compress(file.read_bytes(), quality=9)
                for file in SITE.rglob("*")
                if file.suffix in COMPRESSED and "schema" not in file.parts
            }
        threading.Thread(target=self.serve_forever, daemon=True).start()

    @property
    def address(self) -> str:
        """Where the site is."""
        return f"http://127.0.0.1:{self.server_port}/"

    def send(self, write, content: bytes):
        """Send content piece by piece, each when the link has sent what came before."""
        for start in range(0, len(content), PIECE):
            piece = content[start : start + PIECE]
            with self.turn:
                self.free = max(self.free, time.perf_counter()) + len(piece) / BYTES_A_SECOND
                until = self.free
                self.sent += len(piece)
            time.sleep(max(0.0, until - time.perf_counter()))
            write(piece)

    def handle_error(self, request, client_address):
        """A browser that goes away is no error."""


class Answer(BaseHTTPRequestHandler):
    """Answers with a file, late."""

    protocol_version = "HTTP/1.1"
    disable_nagle_algorithm = True

    def do_GET(self):
        """Send what stands at the address."""
        link = self.server
        time.sleep(DELAY)
        found = file_in(SITE.resolve(), self.path.partition("?")[0].lstrip("/"))
        if not found or found.is_dir():
            found = found / "index.html" if found else None
        content = b"" if not found else link.ready.get(found) or found.read_bytes()
        self.send_response(200 if found else 404)
        if found:
            self.send_header("Content-Type", type_of(found.name))
        if found in link.ready:
            self.send_header("Content-Encoding", "br")
        self.send_header("Content-Length", str(len(content)))
        self.send_header("Cache-Control", "max-age=60")
        self.end_headers()
        link.send(self.wfile.write, content)

    def log_message(self, *ignored):
        """Say nothing."""
