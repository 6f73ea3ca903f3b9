"""The page's interface against its own description: the document by a validator of OpenAPI 3.1, then real questions and
answers of a running page by the schemas in it, and what must be refused.

    python .ci/page/openapi.py target/release/spanhold
"""

import http.client
import json
import subprocess
import sys
from pathlib import Path

from openapi_schema_validator import OAS31Validator
from openapi_spec_validator import validate
from referencing import Registry, Resource
from referencing.jsonschema import DRAFT202012

program = Path(sys.argv[1]).resolve()
document = json.loads(subprocess.run([program, "page", "--openapi"], check=True, capture_output=True, text=True).stdout)
validate(document)
assert document["openapi"].startswith("3.1"), document["openapi"]
registry = Registry().with_resource("urn:page", Resource(contents=document, specification=DRAFT202012))


def closed(schema):
    """The schema with no further keys in its objects, so that an answer with a key that is not described fails."""
    if isinstance(schema, dict):
        out = {key: closed(value) for key, value in schema.items()}
        if "properties" in schema and "additionalProperties" not in schema and "allOf" not in schema:
            out["additionalProperties"] = False
        return out
    return [closed(item) for item in schema] if isinstance(schema, list) else schema


strict = dict(document, components=closed(document["components"]))
registry = Registry().with_resource("urn:page", Resource(contents=strict, specification=DRAFT202012))


def fits(value, schema, what):
    pointed = json.loads(json.dumps(schema).replace('"#/components', '"urn:page#/components'))
    wrong = sorted(OAS31Validator(pointed, registry=registry).iter_errors(value), key=lambda e: list(e.absolute_path))
    assert not wrong, f"{what}: {wrong[0].message[:400]} at {list(wrong[0].absolute_path)}"


page = subprocess.Popen([program, "page", "demo/feed-roller-shaft.yaml", "--port", "0"], stdout=subprocess.PIPE, text=True)
try:
    address = page.stdout.readline().strip().removeprefix("http://").rstrip("/")
    asked = 0

    def ask(method, path, body=None, headers=None):
        global asked
        asked += 1
        connection = http.client.HTTPConnection(address, timeout=120)
        sent = {"content-type": "application/json"} if body is not None else {}
        data = body if isinstance(body, (bytes, type(None))) else json.dumps(body).encode()
        connection.request(method, path, data, sent | (headers or {}))
        response = connection.getresponse()
        content = response.read()
        assert "default-src 'none'" in response.headers["content-security-policy"], path
        return response.status, response.headers, content

    def told(method, path, body=None, expected=200, described=None):
        """Asks, and holds question and answer to the description."""
        described = described or path
        operation = document["paths"][described][method.lower()]
        if body is not None and expected == 200:
            fits(body, operation["requestBody"]["content"]["application/json"]["schema"], f"question {path}")
        status, headers, content = ask(method, path, body)
        assert status == expected, (path, status, content[:300])
        answers = operation["responses"][str(status)]["content"]
        if "application/json" in answers:
            value = json.loads(content)
            fits(value, answers["application/json"]["schema"], f"answer {path} {status}")
            return value
        return content

    start = told("GET", "/start")
    told("GET", "/fields")
    assert told("GET", "/openapi.json") == document
    examples = told("GET", "/gallery")
    assert len(examples) == 8 and not told("POST", "/plan", examples[0]["texts"])["errors"]
    choices = told("GET", "/choices")
    assert not choices["begins"] and len(choices["machines"]) == 6 and len(choices["materials"]) > 5
    fresh = {"length_mm": 250, "diameter_mm": 9, "material": "C45"}
    assert told("POST", "/plan", told("POST", "/new", fresh))["plan"]
    assert [e["way"] for e in told("POST", "/new", fresh | {"material": "cheese"}, 422)["errors"]] == [["material"]]
    drawing = {"name": "platen-shaft.dxf", "bytes": Path("demo/platen-shaft.dxf").read_bytes().decode("latin-1")}
    draft = told("POST", "/draft", drawing)
    assert draft["notes"] and not told("POST", "/plan", {"job": draft["job"]})["errors"]
    assert told("POST", "/draft", drawing | {"flip": True})["job"] != draft["job"]
    told("POST", "/draft", drawing | {"name": "platen-shaft.step"}, 422)
    first = told("POST", "/first", start)
    planned = told("POST", "/plan", start)
    assert planned["settled"] and planned["summary"]
    # What is shown first is the same plan; only what the sampled parts say is missing.
    counted = ("scatter", "verdict", "cautions", "notes")
    assert {k: v for k, v in first["plan"].items() if k not in counted} == {k: v for k, v in planned["plan"].items() if k not in counted}
    assert not first["settled"] and not first["summary"] and first["plan"].get("scatter") is None
    assert told("POST", "/first", start) == planned, "a plan that is known is whole at once"
    assert planned["plan"]["verdict"] != "infeasible" and not planned["errors"]

    edit = {"text": start["job"], "edits": [{"edit": "set", "way": ["shaft", "sections", 0, "length"], "value": "0,8"}]}
    wrong = start | {"job": start["job"] | {"text": told("POST", "/edit", edit)["text"]}}
    errors = told("POST", "/plan", wrong)["errors"]
    assert [e["way"] for e in errors] == [["shaft", "sections", 0, "length"]] and "decimal comma" in errors[0]["what"]
    told("POST", "/edit", edit | {"edits": [{"edit": "remove", "way": ["stock"], "index": 0}]}, 422)

    edit["edits"] = [{"edit": "set", "way": ["limits", "stiffness_min"], "value": "50"}]
    blocked = start | {"job": start["job"] | {"text": told("POST", "/edit", edit)["text"]}}
    assert told("POST", "/plan", blocked)["plan"]["shortfall"]["sets"] == []
    helps = told("POST", "/changes", {"texts": blocked, "first": True})
    assert len(helps["sets"]) == 1 or helps["tried"]
    slower = {"texts": start, "edits": [{"file": "job", "at": "cutting.speed_floor", "value": "0.3"}]}
    assert "speed_floor: 0.3" in told("POST", "/apply", slower)["job"]
    told("POST", "/apply", slower | {"edits": [{"file": "job", "at": "shaft.sections[99]", "value": ""}]}, 422)

    stage = planned["plan"]["stages"][1]
    at = {"texts": start, "turned_mm": 300, "grip_mm": stage["grip"]["nose_mm"], "collet": planned["plan"]["collet"]}
    assert len(told("POST", "/at", at)["shape"]) > 20
    told("POST", "/at", at | {"turned_mm": 1e9}, 422)
    told("POST", "/at", at | {"texts": wrong}, 422)
    first = planned["plan"]["stages"][0]
    moved = {"texts": start, "what": "hand_over", "number": 2, "to_mm": first["to_mm"] + 5}
    assert told("POST", "/prove", moved)["proven"]
    assert not told("POST", "/prove", moved | {"to_mm": first["to_mm"] + 200})["proven"]
    told("POST", "/prove", moved | {"number": 1}, 422)
    told("POST", "/prove", moved | {"what": "grip", "to_mm": -5}, 422)
    sampled = told("POST", "/sampled", {"texts": start})
    assert len(sampled["along"]["band"]) > 20 and sampled["along"]["part"] is None
    assert told("POST", "/sampled", {"texts": start, "part": 7})["along"]["part"]["number"] == 7
    told("POST", "/sampled", {"texts": start, "part": 0}, 422)
    told("POST", "/sampled", {"texts": blocked}, 422)
    for format in ["sheet", "svg", "csv", "positions", "positions-json", "dxf", "xlsx", "text", "json"]:
        assert len(told("POST", f"/export/{format}", start, 200, "/export/{format}")) > 500
    told("POST", "/export/exe", start, 404, "/export/{format}")

    refused = [
        (403, ask("GET", "/start", headers={"host": "evil.example"})),
        (403, ask("POST", "/plan", start, {"origin": "http://evil.example"})),
        (403, ask("GET", "/", headers={"sec-fetch-site": "cross-site"})),
        (415, ask("POST", "/plan", start, {"content-type": "text/plain"})),
        (405, ask("DELETE", "/start")),
        (404, ask("GET", "/../Cargo.toml")),
        (404, ask("GET", "/%2e%2e/etc/passwd")),
        (413, ask("POST", "/plan", b'{"job": "' + b"x" * (3 << 20) + b'"}')),
        (400, ask("POST", "/plan", b"{")),
        (422, ask("POST", "/plan", {"job": {"name": "a", "text": "b", "path": "/etc/passwd"}})),
    ]
    for expected, (status, _, content) in refused:
        assert status == expected and json.loads(content)["what"], (expected, status, content[:200])
    # After all that it still answers, and a job that would plan for ever ends with a word.
    long = start["job"]["text"].replace("length: 330", "length: 3300").replace("bar_length: 3000", "bar_length: 12000")
    long = start | {"job": start["job"] | {"text": long + "limits: {stiffness_min: 0.0001, sag: 10, whip: 10}\nplanning: {station_pitch: 0.5}\n"}}
    status, _, content = ask("POST", "/plan", long)
    assert status in (200, 503), (status, content[:200])
    assert status == 200 or "was stopped" in json.loads(content)["what"]
    assert told("POST", "/plan", start)["plan"] == planned["plan"]
    print(f"the page: the description is valid, {asked} questions and answers are as it says or refused")
finally:
    page.terminate()
