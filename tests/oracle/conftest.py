"""What the engine writes once a session, the swept designs, standing tubes and the physics' points, and what the judges say of them."""

import json
import os
import subprocess
from pathlib import Path

import pytest

import sweep

ROOT = Path(__file__).resolve().parents[2]
# Nine rounds of all kinds and nine more of coils, curves, bodies and ends alone: 306 designs of these.
COUNT, SEED = 513, 20
POINTS, POINTS_SEED = 3000, 4
TUBES, TUBES_SEED = 400, 7


@pytest.fixture(scope="session")
def folder():
    """`TUBEWRIGHT_SWEEP` names a folder that `cargo xtask sweep` has written already."""
    if given := os.environ.get("TUBEWRIGHT_SWEEP"):
        return Path(given)
    target = Path(os.environ.get("CARGO_TARGET_DIR", ROOT / "target")) / "oracle-sweep"
    cargo = os.environ.get("CARGO", "cargo")
    subprocess.run([cargo, "xtask", "sweep", str(target), "--count", str(COUNT), "--seed", str(SEED)], cwd=ROOT, check=True)
    return target


@pytest.fixture(scope="session")
def verdicts(folder):
    return sweep.judge_all(folder)


@pytest.fixture(scope="session")
def standing_folder():
    """`TUBEWRIGHT_STANDING` names a folder that `cargo xtask standing` has written already."""
    if given := os.environ.get("TUBEWRIGHT_STANDING"):
        return Path(given)
    target = Path(os.environ.get("CARGO_TARGET_DIR", ROOT / "target")) / "oracle-standing"
    command = [os.environ.get("CARGO", "cargo"), "xtask", "standing", str(target)]
    subprocess.run([*command, "--count", str(TUBES), "--seed", str(TUBES_SEED)], cwd=ROOT, check=True)
    return target


@pytest.fixture(scope="session")
def points():
    """The physics' points by kind; `TUBEWRIGHT_PHYSICS` names a file that `cargo xtask physics` has written already."""
    if given := os.environ.get("TUBEWRIGHT_PHYSICS"):
        file = Path(given)
    else:
        file = Path(os.environ.get("CARGO_TARGET_DIR", ROOT / "target")) / "oracle-physics.json"
        command = [os.environ.get("CARGO", "cargo"), "xtask", "physics", str(file)]
        subprocess.run([*command, "--count", str(POINTS), "--seed", str(POINTS_SEED)], cwd=ROOT, check=True)
    kinds = {}
    for point in json.loads(file.read_text())["points"]:
        kinds.setdefault(point["kind"], []).append((point["given"], point["found"]))
    return kinds
