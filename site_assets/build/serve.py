"""Serves a built site the way a plain host does, under any sub-path, with its content policy."""

from __future__ import annotations

import argparse
import contextlib
import os
import posixpath
import socket
import threading
from collections.abc import Generator
from html.parser import HTMLParser
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from urllib.parse import unquote, urlsplit

from site_assets.build.host_headers import POLICY, SECURITY, type_of, with_frames

HOST = "127.0.0.1"
PORTS_TRIED = 100

Request = socket.socket | tuple[bytes, socket.socket]


class Server(ThreadingHTTPServer):
    """A running server; use it in a `with` block.

    `address` is the site's first page, `requested` the paths asked for so far,
    and `stop()` closes it and every open connection, as when a phone loses its network.
    """

    daemon_threads = True
    # Elsewhere this reopens a port just closed; on Windows it would share one in use.
    allow_reuse_address = os.name != "nt"

    def __init__(self, folder: Path, base: str = "/", port: int = 0):
        self.folder = Path(folder).resolve()
        self.base = "/" + base.strip("/") + "/" if base.strip("/") else "/"
        self.requested: list[str] = []
        self.connections: set[socket.socket] = set()
        self.guard = threading.Lock()
        super().__init__((HOST, port), FileRequest)
        self.thread = threading.Thread(target=self.serve_forever, kwargs={"poll_interval": 0.05}, daemon=True)
        self.thread.start()
        self.running = True

    @property
    def address(self) -> str:
        return f"http://{HOST}:{self.server_port}{self.base}"

    def stop(self) -> None:
        if not self.running:
            return
        self.running = False
        self.shutdown()
        self.thread.join()
        self.socket.close()
        with self.guard:
            for connection in self.connections:
                with contextlib.suppress(OSError):
                    connection.shutdown(socket.SHUT_RDWR)

    def __exit__(self, *ignored: object) -> None:
        self.stop()

    def process_request(self, request: Request, client_address: object) -> None:
        if isinstance(request, socket.socket):
            with self.guard:
                self.connections.add(request)
        super().process_request(request, client_address)

    def shutdown_request(self, request: Request) -> None:
        if isinstance(request, socket.socket):
            with self.guard:
                self.connections.discard(request)
        super().shutdown_request(request)

    def handle_error(self, request: Request, client_address: object) -> None:
        """A browser that goes away in the middle of an answer is no error."""


class FileRequest(BaseHTTPRequestHandler):
    """Answers one request after another on a connection."""

    protocol_version = "HTTP/1.1"
    disable_nagle_algorithm = True

    def do_GET(self) -> None:
        self.answer(with_body=True)

    def do_HEAD(self) -> None:
        self.answer(with_body=False)

    def answer(self, with_body: bool) -> None:
        server = self.server
        if not isinstance(server, Server):
            raise TypeError(f"{server} serves no site")
        address = urlsplit(self.path)
        path = unquote(address.path)
        server.requested.append(address.path)
        if not path.startswith(server.base):
            if path + "/" == server.base:
                self.redirect(server.base)
            else:
                self.send(404, "text/plain; charset=utf-8", b"Outside the site.\n", with_body)
            return
        found = file_in(server.folder, path.removeprefix(server.base))
        if found and found.is_dir():
            self.redirect(address.path + "/")
            return
        status = 200 if found else 404
        found = found or file_in(server.folder, "404.html")
        if not found:
            self.send(404, "text/plain; charset=utf-8", b"Not found.\n", with_body)
            return
        csp = content_policy(policy_page(server.folder, found))
        self.send(status, type_of(found.name), found.read_bytes(), with_body, csp)

    def redirect(self, to: str) -> None:
        self.send(301, "text/plain; charset=utf-8", b"", False, location=to)

    def send(
        self,
        status: int,
        kind: str,
        body: bytes,
        with_body: bool,
        csp: str | None = None,
        location: str | None = None,
    ) -> None:
        self.send_response(status)
        self.send_header("Content-Type", kind)
        self.send_header("Content-Length", str(len(body)))
        self.send_header("Cache-Control", "no-cache")
        for name, value in SECURITY.items():
            self.send_header(name, value)
        if location:
            self.send_header("Location", location)
        if csp:
            self.send_header(POLICY, with_frames(csp))
        self.end_headers()
        if with_body:
            self.wfile.write(body)

    def log_message(self, format: str, *args: object) -> None:  # noqa: A002 (so its base calls it)
        """A request is no news to the person who serves the handbook."""


def file_in(folder: Path, path: str) -> Path | None:
    """The file that answers a path, a folder that lacks its last slash, or None."""
    # Nothing above the folder can be reached: the path is made whole before it is joined.
    whole = posixpath.normpath("/" + path.replace("\\", "/")).lstrip("/")
    found = folder / whole
    if "\0" in path or not found.exists() or not found.resolve().is_relative_to(folder):
        return None
    if not found.is_dir():
        return None if path.endswith("/") else found
    page = found / "index.html"
    if not page.exists():
        return None
    return page if path.endswith("/") or not path else found


def policy_page(folder: Path, found: Path) -> Path | None:
    """The page whose content policy goes with a file; a worker obeys the policy its own script comes with."""
    if found.suffix == ".html":
        return found
    return folder / "index.html" if found.suffix in (".js", ".mjs") else None


def content_policy(page: Path | None) -> str | None:
    """The content policy a page states about itself, or None."""
    if page is None or not page.exists():
        return None
    reader = PolicyReader()
    reader.feed(page.read_text(encoding="utf-8"))
    return reader.csp


class PolicyReader(HTMLParser):
    """Reads the page's own content policy."""

    csp: str | None = None

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        named = dict(attrs)
        if tag == "meta" and (named.get("http-equiv") or "").lower() == "content-security-policy":
            self.csp = self.csp or " ".join((named.get("content") or "").split()).rstrip("; ")


@contextlib.contextmanager
def serving(folder: Path, base: str = "/") -> Generator[str]:
    """Serve a folder for the length of a `with` block; gives the address of its first page."""
    with Server(folder, base) as server:
        yield server.address


def first_free(folder: Path, base: str, port: int) -> Server:
    """A server on the port, or on the next one that is free."""
    for candidate in range(port, min(port + PORTS_TRIED, 65536)):
        with contextlib.suppress(OSError):
            return Server(folder, base, candidate)
    return Server(folder, base)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("folder", type=Path)
    parser.add_argument("--base", default="/", help="the sub-path the site stands under")
    parser.add_argument("--port", type=int, default=8000, help="the next free one is taken (default 8000)")
    chosen = parser.parse_args()
    with first_free(chosen.folder, chosen.base, chosen.port) as server:
        print(f"The handbook is at {server.address}  (Ctrl+C ends)", flush=True)
        with contextlib.suppress(KeyboardInterrupt):
            server.thread.join()


if __name__ == "__main__":
    main()
