"""A pack opened by Python's zipfile, its sheet and texts read by Python's own parsers."""

import hashlib
import io
import re
import zipfile
from html.parser import HTMLParser

# What a name space is called by is fetched by nobody.
NAMES = re.compile(r"""xmlns(:\w+)?=["'][^"']*["']""")
# A scheme with its slashes, or one that goes without; words may end in a colon too.
ADDRESS = re.compile(r"[a-z][a-z0-9+.-]*://|\b(?:mailto:|javascript:|file:/)|^\s*//\w", re.IGNORECASE | re.MULTILINE)
STYLE = re.compile(r"@import|url\(\s*(?!['\"]?#)", re.IGNORECASE)
# Without any of these there is no address.
SIGNS = ("//", "mailto:", "javascript:", "file:/")
# Attributes that a reader follows.
FOLLOWED = {"src", "srcset", "href", "xlink:href", "action", "formaction", "data", "poster", "background", "cite", "ping", "manifest"}
ACTIVE = {"script", "iframe", "object", "embed", "link", "base", "foreignobject"}


def opened(path):
    """The files of an archive by name."""
    with zipfile.ZipFile(io.BytesIO(path.read_bytes())) as archive:
        assert archive.testzip() is None, path
        names = archive.namelist()
        assert len(set(map(str.casefold, names))) == len(names), path
        return {name: archive.read(name) for name in names}


def faults_of_sums(files):
    """What is wrong with the list of checksums."""
    listed = {}
    for line in files["checksums.txt"].decode().splitlines():
        digest, name = line.split("  ", 1)
        listed[name] = digest
    faults = [f"checksums list {name}, which is not there" for name in listed if name not in files]
    faults += [f"{name} is not in the checksums" for name in files if name not in listed and name != "checksums.txt"]
    return faults + [f"{name} has another checksum" for name in listed
                     if name in files and hashlib.sha256(files[name]).hexdigest() != listed[name]]


class Rows(HTMLParser):
    """What the rows of the sheet say to programs, as a reader of HTML, not of XML, finds it."""

    def __init__(self):
        super().__init__()
        self.found = []

    def handle_starttag(self, tag, attributes):
        given = dict(attributes)
        if tag == "tr" and "data-box" in given:
            self.found.append(given)


class References(HTMLParser):
    """What a marked-up text makes a reader fetch or run."""

    def __init__(self):
        super().__init__()
        self.found = []

    def handle_starttag(self, tag, attributes):
        if tag in ACTIVE:
            self.found.append(f"<{tag}>")
        for name, value in attributes:
            if name in FOLLOWED and not (value or "").startswith("#") or name.startswith("on"):
                self.found.append(f"{name}={value}")

    handle_startendtag = handle_starttag


def texts(files):
    """Every text of a pack, those inside its 3MF files too, by name."""
    for name, data in files.items():
        if name.endswith(".3mf"):
            with zipfile.ZipFile(io.BytesIO(data)) as inner:
                yield from ((f"{name}/{part}", inner.read(part).decode()) for part in inner.namelist()
                            if part.endswith((".model", ".rels", ".xml", ".json", ".txt")))
        elif not name.endswith(".stl"):
            yield name, data.decode()


def faults_of_references(name, text):
    """What of a text points outside the pack."""
    faults = []
    if not name.endswith(".rels") and ".3mf/" not in name and name.endswith((".html", ".svg")):
        reader = References()
        reader.feed(text)
        faults += reader.found + STYLE.findall(text)
    if name.endswith(".rels"):
        # A relationship's type is a name; its target is a place, inside the package.
        faults += [target for target in re.findall(r'Target="([^"]*)"', text) if not target.startswith("/")]
        faults += re.findall(r'TargetMode="External"', text)
        return [f"{name}: {fault}" for fault in faults]
    if name.endswith("[Content_Types].xml"):
        return []
    # Outside the meshes, whose millions of numbers are let be where they hold no sign of an address.
    first, *others = text.split("<mesh>")
    for part in (first, *(part.partition("</mesh>")[2] for part in others), *(part.partition("</mesh>")[0] for part in others)):
        if any(sign in part.lower() for sign in SIGNS):
            faults += ADDRESS.findall(NAMES.sub("", part))
    return [f"{name}: {fault}" for fault in faults]
