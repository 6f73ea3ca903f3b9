"""The page under attack and load: what must be refused, then many clients at once beside slow ones and large bodies. It must
answer everyone who asks properly until the end, and its memory must stay within a bound.

    python3 .ci/page/load.py target/release/spanhold [SECONDS [CLIENTS]]

Standard library only. Prints shares and ratios; times of a loaded machine tell nothing.
"""

import asyncio
import json
import pathlib
import socket
import subprocess
import sys
import time

program = pathlib.Path(sys.argv[1]).resolve()
SECONDS = float(sys.argv[2]) if len(sys.argv) > 2 else 8.0
CLIENTS = int(sys.argv[3]) if len(sys.argv) > 3 else 40
SLOW = 80
# As many as the page lets in at once.
CONNECTIONS = 256
# More than this above the idle page is a leak or a queue without end.
MOST_MB = 400

demo = pathlib.Path("demo")
texts = {
    "job": {"name": "job.yaml", "text": (demo / "feed-roller-shaft.yaml").read_text()},
    "machine": {"name": "long-bed-32.yaml", "text": (demo / "machines/long-bed-32.yaml").read_text()},
}
at = {"texts": texts, "turned_mm": 200}
heavy = json.loads(json.dumps(texts))
heavy["job"]["text"] += "\nplanning: {station_pitch: 0.5}\n"


def memory_mb(pid, key):
    for line in pathlib.Path(f"/proc/{pid}/status").read_text().splitlines():
        if line.startswith(key + ":"):
            return int(line.split()[1]) / 1024
    raise KeyError(key)


async def ask(method, path, body=None, headers=None, host=None, timeout=150):
    """Status and body of one request on a connection of its own; 0 where the page closed it."""
    reader, writer = await asyncio.open_connection(*HOST)
    try:
        sent = {"Host": host or f"{HOST[0]}:{HOST[1]}", "Connection": "close"}
        if body is not None:
            body = body if isinstance(body, bytes) else json.dumps(body).encode()
            sent |= {"Content-Type": "application/json", "Content-Length": str(len(body))}
        sent |= headers or {}
        head = f"{method} {path} HTTP/1.1\r\n" + "".join(f"{k}: {v}\r\n" for k, v in sent.items() if v is not None)
        writer.write(head.encode("latin-1") + b"\r\n" + (body or b""))
        try:
            await writer.drain()
        except ConnectionError:
            pass
        try:
            answer = await asyncio.wait_for(reader.read(), timeout)
        except ConnectionError:
            return 0, b""
        if not answer.startswith(b"HTTP/1.1 "):
            return 0, answer
        return int(answer[9:12]), answer.partition(b"\r\n\r\n")[2]
    finally:
        writer.close()


async def refusals():
    """What must not be let in, and what must be told what is wrong with it."""
    asked = 0
    for expected, method, path, body, headers in [
        ({403}, "GET", "/start", None, {"Host": "evil.example"}),
        ({403}, "GET", "/start", None, {"Host": f"127.0.0.1:{HOST[1] + 1}"}),
        ({400, 403}, "GET", "/start", None, {"Host": None}),
        ({403}, "POST", "/plan", texts, {"Origin": "http://evil.example"}),
        ({403}, "POST", "/plan", texts, {"Origin": "null"}),
        ({403}, "POST", "/plan", texts, {"Sec-Fetch-Site": "cross-site"}),
        ({415}, "POST", "/plan", texts, {"Content-Type": "text/plain"}),
        ({415}, "POST", "/plan", texts, {"Content-Type": "application/x-www-form-urlencoded"}),
        ({405}, "PUT", "/plan", texts, {}),
        ({405}, "DELETE", "/start", None, {}),
        ({405}, "OPTIONS", "/plan", None, {"Access-Control-Request-Method": "POST"}),
        ({405}, "GET", "/plan", None, {}),
        ({404}, "GET", "/../../etc/passwd", None, {}),
        ({404}, "GET", "/..%2f..%2fetc%2fpasswd", None, {}),
        ({404}, "GET", "/%2e%2e/%2e%2e/etc/passwd", None, {}),
        ({404}, "GET", "/assets//etc/passwd", None, {}),
        ({400, 404}, "GET", "/..\\..\\etc\\passwd", None, {}),
        ({400, 404}, "GET", "/style.css%00.html", None, {}),
        ({404}, "POST", "/export/..%2f..%2fetc%2fpasswd", texts, {}),
        ({400}, "POST", "/plan", b"", {}),
        ({400}, "POST", "/plan", b"{", {}),
        ({400}, "POST", "/plan", b"\xff\xfe{}", {}),
        ({400, 422}, "POST", "/plan", b"[" * 200_000, {}),
        ({422}, "POST", "/plan", b"[]", {}),
        ({422}, "POST", "/plan", {"job": 7}, {}),
        ({422}, "POST", "/plan", texts | {"more": 1}, {}),
        ({422}, "POST", "/first", texts | {"more": 1}, {}),
        ({415}, "POST", "/first", texts, {"Content-Type": "text/plain"}),
        ({422}, "POST", "/new", {"length_mm": 1e308, "diameter_mm": -1, "material": "../../etc/passwd"}, {}),
        ({422}, "POST", "/new", {"length_mm": "far", "diameter_mm": 1, "material": "C45"}, {}),
        ({422}, "POST", "/draft", {"name": "../../../etc/passwd", "bytes": ""}, {}),
        ({422}, "POST", "/draft", {"name": "/etc/passwd.csv", "bytes": "root\u20ac"}, {}),
        ({422}, "POST", "/draft", {"name": "deep.dxf", "bytes": "0\nSECTION\n" * 50_000}, {}),
        ({422}, "POST", "/draft", {"name": "no.xlsx", "bytes": "PK\x03\x04" + "\xff" * 1000}, {}),
        ({413, 0}, "POST", "/draft", b'{"name": "a.csv", "bytes": "' + b"x" * 10_000_000 + b'"}', {}),
        ({405}, "POST", "/choices", texts, {}),
        ({405}, "PUT", "/gallery", texts, {}),
        ({422}, "POST", "/at", at | {"turned_mm": "far"}, {}),
        ({422}, "POST", "/at", at | {"turned_mm": 1e300}, {}),
        ({422}, "POST", "/prove", {"texts": texts, "what": "grip", "number": 10**12, "to_mm": 1}, {}),
        ({422}, "POST", "/edit", {"text": texts["job"], "edits": [{"edit": "remove", "way": [2**60], "index": 0}]}, {}),
        ({413, 0}, "POST", "/plan", b'{"job": "' + b"x" * 10_000_000 + b'"}', {}),
        ({400, 413, 0}, "POST", "/plan", b"{}", {"Content-Length": "99999999999999999999"}),
        ({400, 431, 0}, "GET", "/start", None, {"X-Long": "x" * 1_000_000}),
    ]:
        status, answer = await ask(method, path, body, headers)
        assert status in expected, f"{method} {path[:40]} {headers}: {status}, not {expected}: {answer[:200]}"
        assert b"root:" not in answer
        asked += 1
    # Bytes that are no HTTP at all.
    for junk in [b"\x16\x03\x01\x02\x00\x01\x00", b"\r\n" * 10_000, b"GET", bytes(range(256)) * 400]:
        reader, writer = await asyncio.open_connection(*HOST)
        writer.write(junk)
        try:
            writer.write_eof()
            await asyncio.wait_for(reader.read(), 60)
        except OSError:
            # Thrown out already.
            pass
        writer.close()
        asked += 1
    return asked


async def unread():
    """As many as are let in, who ask and ask and read nothing: the next one is answered though none of them leaves."""
    asks = f"GET /fields HTTP/1.1\r\nHost: {HOST[0]}:{HOST[1]}\r\n\r\n".encode() * 700
    held = []
    try:
        for _ in range(CONNECTIONS):
            connection = socket.create_connection(HOST)
            connection.setblocking(False)
            held.append(connection)
        for _ in range(4):
            for connection in held:
                try:
                    connection.send(asks)
                except OSError:
                    # It takes no more.
                    pass
            await asyncio.sleep(0.5)
        status, _ = await ask("GET", "/start", timeout=60)
        assert status == 200, status
    finally:
        for connection in held:
            connection.close()


async def slow(ends, body):
    """A client that never gets done: with its headers, or with its body. It comes again when it is thrown out."""
    thrown = 0
    while time.monotonic() < ends:
        reader, writer = await asyncio.open_connection(*HOST)
        try:
            if body:
                head = f"POST /plan HTTP/1.1\r\nHost: {HOST[0]}:{HOST[1]}\r\nContent-Type: application/json\r\n"
                writer.write(f"{head}Content-Length: 100000\r\n\r\n{{".encode())
            else:
                writer.write(b"GET /start HTTP/1.1\r\n")
            while time.monotonic() < ends:
                writer.write(b" " if body else b"X-A: b\r\n")
                await writer.drain()
                done = asyncio.create_task(reader.read(1))
                if await asyncio.wait({done}, timeout=0.5) and done.done():
                    thrown += 1
                    break
                done.cancel()
        except ConnectionError:
            thrown += 1
        finally:
            writer.close()
    return thrown


async def large(ends):
    """Bodies of 10 MB, one after another."""
    body = b'{"job": "' + b"x" * 10_000_000 + b'"}'
    count = 0
    while time.monotonic() < ends:
        status, _ = await ask("POST", "/plan", body)
        assert status in (413, 0, 503), status
        count += 1
    return count


async def client(number, ends):
    """A page in use: its files, an edit, a moment, a plan; what comes back must be what was asked for, or that there is a queue."""
    answered = busy = 0
    turns = [
        ("GET", "/", None),
        ("GET", "/start", None),
        ("POST", "/edit", {"text": texts["job"], "edits": [{"edit": "set", "way": ["stock", "diameter"], "value": "20"}]}),
        ("POST", "/at", at | {"turned_mm": 100 + number}),
        ("GET", "/main.js", None),
        ("POST", "/first", texts),
        ("POST", "/plan", texts),
        ("POST", "/plan", {"job": {"name": "job.yaml", "text": "shaft: {"}}),
    ]
    if number % 20 == 0:
        # Now and then one that takes long, and nobody waits for.
        turns.append(("LEAVE", "/plan", heavy))
    turn = number
    while time.monotonic() < ends:
        method, path, body = turns[turn % len(turns)]
        turn += 1
        if method == "LEAVE":
            try:
                await ask("POST", path, body, timeout=1)
            except TimeoutError:
                pass
            continue
        status, answer = await ask(method, path, body)
        assert status in (200, 503), f"{method} {path}: {status} {answer[:200]}"
        answered += status == 200
        busy += status == 503
    return answered, busy


async def load():
    ends = time.monotonic() + SECONDS
    clients = [asyncio.create_task(client(n, ends)) for n in range(CLIENTS)]
    slows = [asyncio.create_task(slow(ends, body=n % 2 == 0)) for n in range(SLOW)]
    larges = [asyncio.create_task(large(ends)) for _ in range(3)]
    # One who asks for little, from the first to the last: nobody keeps it out.
    quick = 0
    while time.monotonic() < ends:
        status, _ = await ask("GET", "/start")
        assert status in (200, 503), status
        quick += status == 200
        await asyncio.sleep(0.2)
    done = await asyncio.gather(*clients)
    thrown = await asyncio.gather(*slows)
    sent = await asyncio.gather(*larges)
    answered, busy = sum(d[0] for d in done), sum(d[1] for d in done)
    assert all(d[0] for d in done), "a client got no answer at all"
    assert quick > 0
    return answered, busy, sum(thrown), sum(sent)


page = subprocess.Popen([program, "page", "demo/feed-roller-shaft.yaml", "--port", "0"], stdout=subprocess.PIPE, text=True)
try:
    address = page.stdout.readline().strip().removeprefix("http://").rstrip("/")
    HOST = (address.split(":")[0], int(address.split(":")[1]))
    asked = asyncio.run(refusals())
    # One plan at peace is what the memory is measured by.
    assert asyncio.run(ask("POST", "/plan", texts))[0] == 200
    idle = memory_mb(page.pid, "VmHWM")
    asyncio.run(unread())
    answered, busy, thrown, sent = asyncio.run(load())
    assert page.poll() is None, "the page ended"
    # Still there, and for everyone, once the slow ones are gone.
    status, answer = asyncio.run(ask("POST", "/plan", texts))
    assert status == 200 and json.loads(answer)["plan"]["verdict"] != "infeasible"
    most = memory_mb(page.pid, "VmHWM")
    assert most - idle < MOST_MB, f"{most:.0f} MB after {idle:.0f} MB"
    print(
        f"page: {asked} hostile requests refused; {CLIENTS} clients, {SLOW} slow ones ({thrown} thrown out), {sent} bodies of 10 MB: "
        f"{answered} answers, {100 * busy / (answered + busy):.0f} % told to wait; "
        f"most memory {most / idle:.1f} times that of one plan ({most:.0f} MB)"
    )
finally:
    page.terminate()
    page.wait(timeout=20)
