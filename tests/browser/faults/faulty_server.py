"""A host that fails in the ways hosts and networks do: it cuts, spoils, delays, refuses, or asks to sign in first."""

import contextlib
import socket
import time
from collections.abc import Callable
from dataclasses import dataclass
from threading import Event
from urllib.parse import unquote, urlsplit

from site_assets.build.host_headers import CACHING, headers_of, type_of
from site_assets.build.serve import FileRequest, Server

SIGN_IN = "/sign-in"
PORTAL_WORDS = "Welcome. Sign in to use this network."
PORTAL = f"<!doctype html><title>Sign in</title><h1>{PORTAL_WORDS}</h1><form action='{SIGN_IN}'></form>".encode()
ERROR_PAGE = b"<!doctype html><title>Error</title><h1>The server cannot answer now.</h1>"
PIECE = 64 * 1024
HELD = 600  # s; whoever waits for it waits in vain


@dataclass
class Reply:
    """What is about to be sent."""

    status: int
    headers: dict[str, str]
    body: bytes


@dataclass(frozen=True)
class Fault:
    """What happens to the requests that it `hits`, told by path within the site and by number, from 1."""

    do: Callable[["FaultyAnswer", Reply], None]
    hits: Callable[[str, int], bool] = lambda path, number: True


class FaultyServer(Server):
    """Serves a folder with the caching that hosts are told to use; `fault` strikes while it is set."""

    def __init__(self, folder, base):
        self.fault: Fault | None = None
        self.since: str | None = None  # the path whose request begins the count
        self.number = 0  # of requests since then
        self.struck: list[str] = []
        self.held: set[socket.socket] = set()
        super().__init__(folder, base)
        self.RequestHandlerClass = FaultyAnswer

    def strike(self, fault: Fault | None, since: str | None = None) -> None:
        """Begin to fail, once the path `since` is asked for, or with None be well again; what was held is let go."""
        with self.guard:
            self.fault, self.since, self.number, self.struck = fault, since, 0, []
            held, self.held = self.held, set()
        for connection in held:
            with contextlib.suppress(OSError):
                connection.shutdown(socket.SHUT_RDWR)

    def next_fault(self, path: str) -> Fault | None:
        """Return what strikes the request that is answered now."""
        with self.guard:
            if self.since in (None, path):
                self.since = None
                self.number += 1
            if not self.number or not self.fault or not self.fault.hits(path, self.number):
                return None
            self.struck.append(path)
            return self.fault


class FaultyAnswer(FileRequest):
    """Sends what a good host would, or what the fault makes of it."""

    def send(self, status, kind, body, with_body, csp=None, location=None):
        """Send a reply, spoilt where the fault strikes."""
        path = unquote(urlsplit(self.path).path)
        inside = path.removeprefix(self.server.base) if path.startswith(self.server.base) else path
        headers = headers_of(inside, csp) if csp else {CACHING: headers_of(inside, "")[CACHING]}
        if status != 200:
            headers[CACHING] = "no-cache"
        if path.startswith(SIGN_IN):
            status, kind, body = 200, type_of(".html"), PORTAL
        if location:
            headers["Location"] = location
        reply = Reply(status, {"Content-Type": kind, **headers}, body if with_body else b"")
        fault = self.server.next_fault(inside)
        (fault.do if fault else give)(self, reply)

    def begin(self, reply: Reply, length: int | None) -> None:
        """Send the head; without a length the end of the connection is the end of the body."""
        self.send_response(reply.status)
        for name, value in reply.headers.items():
            self.send_header(name, value)
        if length is None:
            self.send_header("Connection", "close")
            self.close_connection = True
        else:
            self.send_header("Content-Length", str(length))
        self.end_headers()


def give(answer: FaultyAnswer, reply: Reply) -> None:
    """Send it as it is."""
    answer.begin(reply, len(reply.body))
    answer.wfile.write(reply.body)


def cut(answer: FaultyAnswer, reply: Reply) -> None:
    """Cut the connection before anything is sent."""
    answer.close_connection = True
    with contextlib.suppress(OSError):
        answer.connection.shutdown(socket.SHUT_RDWR)


def cut_body(answer: FaultyAnswer, reply: Reply) -> None:
    """Send the length and half of the body, then cut."""
    answer.begin(reply, len(reply.body))
    answer.wfile.write(reply.body[: len(reply.body) // 2])
    answer.wfile.flush()
    cut(answer, reply)


def cut_at(part: float) -> Callable[[FaultyAnswer, Reply], None]:
    """Return what sends such a part of the body in a way that looks whole."""

    def do(answer: FaultyAnswer, reply: Reply) -> None:
        answer.begin(reply, None)
        answer.wfile.write(reply.body[: int(len(reply.body) * part)])

    return do


cut_body_of_no_length = cut_at(0.5)


def half_until(free: Event) -> Callable[[FaultyAnswer, Reply], None]:
    """Return what sends half of the body, and the rest once `free` is set."""

    def do(answer: FaultyAnswer, reply: Reply) -> None:
        half = len(reply.body) // 2
        answer.begin(reply, len(reply.body))
        answer.wfile.write(reply.body[:half])
        answer.wfile.flush()
        free.wait(60)
        answer.wfile.write(reply.body[half:])

    return do


def hold(answer: FaultyAnswer, reply: Reply) -> None:
    """Send nothing and keep the connection until the fault is gone."""
    with answer.server.guard:
        answer.server.held.add(answer.connection)
    answer.connection.settimeout(HELD)
    with contextlib.suppress(OSError):
        answer.connection.recv(1)
    answer.close_connection = True


def hold_body(answer: FaultyAnswer, reply: Reply) -> None:
    """Send half of the body, then nothing more."""
    answer.begin(reply, len(reply.body))
    answer.wfile.write(reply.body[: len(reply.body) // 2])
    answer.wfile.flush()
    hold(answer, reply)


def slow(answer: FaultyAnswer, reply: Reply) -> None:
    """Send all of it, late and in pieces."""
    time.sleep(0.02)
    answer.begin(reply, len(reply.body))
    for start in range(0, len(reply.body), PIECE):
        answer.wfile.write(reply.body[start : start + PIECE])
        time.sleep(0.002)


def spoil_at(part: float) -> Callable[[FaultyAnswer, Reply], None]:
    """Return what changes one bit, so far into the body."""

    def do(answer: FaultyAnswer, reply: Reply) -> None:
        spoilt = bytearray(reply.body)
        if spoilt:
            spoilt[int(len(spoilt) * part)] ^= 1
        give(answer, Reply(reply.status, reply.headers, bytes(spoilt)))

    return do


spoil = spoil_at(0.5)


def mistype(answer: FaultyAnswer, reply: Reply) -> None:
    """Call it plain text."""
    give(answer, Reply(reply.status, reply.headers | {"Content-Type": "text/plain"}, reply.body))


def refuse(status: int) -> Callable[[FaultyAnswer, Reply], None]:
    """Return what answers with an error's status and the host's own page."""
    said = {"Content-Type": "text/html", "Cache-Control": "no-cache"}
    return lambda answer, reply: give(answer, Reply(status, said, ERROR_PAGE))


def sign_in(status: int = 200, caching: str = "no-store") -> Callable[[FaultyAnswer, Reply], None]:
    """Return what answers everything with the page of a captive portal."""
    said = {"Content-Type": "text/html", "Cache-Control": caching}
    return lambda answer, reply: give(answer, Reply(status, said, PORTAL))


def redirecting(to: str) -> Callable[[FaultyAnswer, Reply], None]:
    """Return what redirects everything to the page of a captive portal."""

    def do(answer: FaultyAnswer, reply: Reply) -> None:
        if urlsplit(answer.path).path.startswith(SIGN_IN):
            return give(answer, Reply(200, {"Content-Type": "text/html", "Cache-Control": "no-store"}, PORTAL))
        address = to.format(port=answer.server.server_port)
        return give(answer, Reply(302, {"Location": address, "Cache-Control": "no-store"}, b""))

    return do


send_to_sign_in = redirecting(SIGN_IN)
# The same machine by another name, so another origin.
send_to_sign_in_elsewhere = redirecting(f"http://localhost:{{port}}{SIGN_IN}")
