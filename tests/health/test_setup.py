"""What the tests need is found, or brought, or asked for in one line; without it no test runs, and none is skipped."""

import pytest

from site_assets.setup import engines


@pytest.fixture
def bare(monkeypatch, tmp_path):
    """A machine with apt-get and none of the programs, on which nothing may be installed."""
    (tmp_path / "apt-get").touch(mode=0o755)
    monkeypatch.setenv("PATH", str(tmp_path))
    for program in engines.PROGRAMS:
        monkeypatch.delenv(program.variable, raising=False)
    monkeypatch.setattr("site_assets.setup.debian.is_root", lambda: False)
    return tmp_path


def test_programs_that_are_here_are_named_by_their_paths(bare):
    for program in engines.PROGRAMS:
        (bare / program.names[0]).touch(mode=0o755)
    assert engines.engine_variables() == {
        "FIREFOX": str(bare / "firefox-esr"),
        "WEBKIT_DRIVER": str(bare / "WebKitWebDriver"),
        "XVFB": str(bare / "Xvfb"),
    }


def test_programs_that_are_missing_stop_the_run_with_one_line_to_type(bare):
    (bare / "firefox-esr").touch(mode=0o755)
    with pytest.raises(SystemExit) as stopped:
        engines.engine_variables()
    reason, _, line = str(stopped.value).splitlines()
    assert reason.endswith("WebKitWebDriver and Xvfb are not here.")
    assert line.strip() == "sudo apt-get update && sudo apt-get install -y webkit2gtk-driver xvfb"


def test_where_we_may_the_missing_programs_are_installed(bare, monkeypatch):
    def installed(*packages):
        assert packages == ("firefox-esr", "webkit2gtk-driver", "xvfb")
        for program in engines.PROGRAMS:
            (bare / program.names[0]).touch(mode=0o755)
        return True

    monkeypatch.setattr(engines, "installs", installed)
    assert set(engines.engine_variables()) == {program.variable for program in engines.PROGRAMS}


def test_a_path_that_is_told_and_is_no_program_stops_the_run(bare, monkeypatch):
    monkeypatch.setenv("FIREFOX", str(bare / "nothing"))
    with pytest.raises(SystemExit, match=r"FIREFOX names .*nothing, which is no program"):
        engines.engine_variables()
