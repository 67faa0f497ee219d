"""What the engine writes once a session, the swept designs, standing tubes, packs and the physics' points, and what the judges say of them."""

import json
import os
import subprocess
from pathlib import Path

import pytest

import sweep

ROOT = Path(__file__).resolve().parents[2]


def written(what, variable):
    """What `cargo xtask` of that name writes; the variable names what it has written already."""
    if given := os.environ.get(variable):
        return Path(given)
    worker = os.environ.get("PYTEST_XDIST_WORKER", "")
    target = Path(os.environ.get("CARGO_TARGET_DIR", ROOT / "target")) / f"oracle-{what}{worker}"
    subprocess.run([os.environ.get("CARGO", "cargo"), "xtask", what, str(target)], cwd=ROOT, check=True)
    return target


def pytest_collection_modifyitems(items):
    """The verdicts first: they take longest, and the other files go to the other worker meanwhile."""
    items.sort(key=lambda item: "verdicts" not in item.fixturenames)


@pytest.fixture(scope="session")
def folder():
    """A folder of swept designs with their reports and files."""
    return written("sweep", "TUBEWRIGHT_SWEEP")


@pytest.fixture(scope="session")
def verdicts(folder):
    return sweep.judge_all(folder)


@pytest.fixture(scope="session")
def standing_folder():
    """A folder of tubes as they stand on a plate."""
    return written("standing", "TUBEWRIGHT_STANDING")


@pytest.fixture(scope="session")
def split_folder():
    """A folder of runs in pieces, and put together."""
    return written("split", "TUBEWRIGHT_SPLIT")


@pytest.fixture(scope="session")
def packs_folder():
    """A folder of packs of made-up designs."""
    return written("packs", "TUBEWRIGHT_PACKS")


@pytest.fixture(scope="session")
def points():
    """The physics' points by kind."""
    kinds = {}
    for point in json.loads(written("physics", "TUBEWRIGHT_PHYSICS").read_text())["points"]:
        kinds.setdefault(point["kind"], []).append((point["given"], point["found"]))
    return kinds
