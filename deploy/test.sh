#!/bin/sh
# Sets up what is missing, then checks format, lint and types and runs the whole test suite. Options go to pytest:
# --long runs the long forms. A test that needs something this machine lacks is skipped and named.
set -eu
cd "$(dirname "$0")/.."
. deploy/setup.sh
set_up -test

failed=""
run() {
    name=$1
    shift
    say "== $name"
    "$@" || failed="$failed $name"
}

# What a test, or a browser that it starts, keeps or leaves lying lies in the checkout too.
mkdir -p .venv/home .venv/tmp
rm -f .venv/tmp/style
# Beside the tests, since one core would wait: it takes half a minute.
{
    run format .venv/bin/python -m ruff format --check --quiet .
    run lint .venv/bin/python -m ruff check --quiet .
    run types .venv/bin/python -m mypy --no-error-summary
    printf '%s' "$failed" >.venv/tmp/style
} &
run tests env HOME="$(pwd)/.venv/home" TMPDIR="$(pwd)/.venv/tmp" .venv/bin/python -m pytest -rs -n auto \
    --dist loadfile --no-loadscope-reorder "$@"
wait
failed="$(cat .venv/tmp/style)$failed"

if [ -n "$failed" ]; then
    say "Not right:$failed"
    exit 1
fi
