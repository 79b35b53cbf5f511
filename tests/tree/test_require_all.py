import pytest

pytest_plugins = ["pytester"]

ONE_OF_EACH = """
import pytest

def test_that_runs(): pass

@pytest.mark.skip(reason="no browser here")
def test_of_a_browser(): pass

def test_that_skips_inside(): pytest.skip("no server here")

@pytest.mark.xfail(reason="known")
def test_expected_to_fail(): assert False

@pytest.mark.long
def test_in_its_long_form(): pass

@pytest.mark.weeks
@pytest.mark.parametrize("database", ["sqlite", pytest.param("postgres", marks=pytest.mark.postgres)])
def test_of_weeks(database): pass
"""


@pytest.fixture
def suite(pytester: pytest.Pytester) -> pytest.Pytester:
    pytester.makeini("[pytest]\nmarkers =\n    long\n    weeks\n    postgres\n")
    pytester.makeconftest('pytest_plugins = ["tests.plugins.require_all"]')
    pytester.makepyfile(ONE_OF_EACH)
    return pytester


def test_a_skip_is_a_skip_on_a_machine_that_lacks_something(
    suite: pytest.Pytester, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.delenv("REMINDERS_REQUIRE_ALL", raising=False)

    suite.runpytest_inprocess().assert_outcomes(passed=2, skipped=2, xfailed=1, deselected=2)


def test_a_skip_fails_where_nothing_may_be_skipped(suite: pytest.Pytester, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("REMINDERS_REQUIRE_ALL", "1")

    result = suite.runpytest_inprocess()

    # A skip by a mark is met while setting up, one from inside while running.
    result.assert_outcomes(passed=2, failed=1, errors=1, xfailed=1, deselected=2)
    result.stdout.fnmatch_lines(
        ["*may not be skipped here*no browser here*", "*may not be skipped here*no server here*"]
    )


def test_a_whole_file_that_skips_itself_fails_too(suite: pytest.Pytester, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("REMINDERS_REQUIRE_ALL", "1")
    suite.makepyfile(test_whole="import pytest\npytest.skip('no engine here', allow_module_level=True)")

    suite.runpytest_inprocess("test_whole.py").assert_outcomes(errors=1)


def test_the_long_forms_run_when_asked_for(suite: pytest.Pytester, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv("REMINDERS_REQUIRE_ALL", raising=False)

    suite.runpytest_inprocess("--long").assert_outcomes(passed=4, skipped=2, xfailed=1)
