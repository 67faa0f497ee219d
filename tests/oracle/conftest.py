"""The swept designs, written by the engine once a session, and what the judges say of them."""

import os
import subprocess
from pathlib import Path

import pytest

import sweep

ROOT = Path(__file__).resolve().parents[2]
COUNT, SEED = 760, 20


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
