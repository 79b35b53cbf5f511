"""Where nothing may be skipped (REMINDERS_REQUIRE_ALL=1), a skipped test fails; the long forms run with --long alone.

A long form that was not asked for is left out, not skipped, so that the list of skips names only what a machine lacks.
"""

import os
from collections.abc import Generator
from typing import Any

import pytest


def pytest_addoption(parser: pytest.Parser) -> None:
    parser.addoption("--long", action="store_true", help="run the long forms of the slow proofs too")


def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    if config.getoption("--long"):
        return
    left_out = [item for item in items if is_long_form(item)]
    if left_out:
        config.hook.pytest_deselected(items=left_out)
        items[:] = [item for item in items if not is_long_form(item)]


def is_long_form(item: pytest.Item) -> bool:
    """Return whether a test is a long form: weeks on PostgreSQL ask it nothing that days do not."""
    has = item.get_closest_marker
    return has("long") is not None or (has("weeks") is not None and has("postgres") is not None)


@pytest.hookimpl(wrapper=True)
def pytest_runtest_makereport(item: pytest.Item) -> Generator[None, pytest.TestReport, pytest.TestReport]:
    report = yield
    return failed_instead(report, item.nodeid) if must_run(report) else report


@pytest.hookimpl(wrapper=True)
def pytest_make_collect_report(
    collector: pytest.Collector,
) -> Generator[None, pytest.CollectReport, pytest.CollectReport]:
    report = yield
    return failed_instead(report, collector.nodeid) if must_run(report) else report


def must_run(report: Any) -> bool:
    """Return whether a report tells of a skip where none is allowed; an expected failure is none."""
    return os.environ.get("REMINDERS_REQUIRE_ALL") == "1" and report.skipped and not hasattr(report, "wasxfail")


def failed_instead(report: Any, name: str) -> Any:
    """Return a skip's report as a failure that says why it was skipped."""
    why = report.longrepr[2] if isinstance(report.longrepr, tuple) else report.longrepr
    report.outcome = "failed"
    report.longrepr = f"{name} may not be skipped here (REMINDERS_REQUIRE_ALL=1): {why}"
    return report
