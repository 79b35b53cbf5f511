#!/bin/sh
# Writes the locked requirements anew from pyproject.toml, for Python 3.11 to 3.13 and every platform. Needs uv on the PATH.
# The files name no registry: each machine's pip uses its own.
set -eu
cd "$(dirname "$0")/.."

lock() {
    out="deploy/requirements$1.txt"
    shift
    {
        echo "# Made by deploy/lock.sh from pyproject.toml; change that, then run it."
        uv pip compile --quiet --no-cache --universal --python-version 3.11 --no-annotate --no-header \
            --no-emit-index-url --no-emit-find-links "$@"
    } >"$out.new"
    mv "$out.new" "$out"
}

# What builds the project itself is locked too, so that installing it asks the network for nothing more.
printf 'hatchling>=1.25\neditables\n' >deploy/build.in
trap 'rm -f deploy/build.in' EXIT
lock "" pyproject.toml deploy/build.in
lock "-test" --constraint deploy/requirements.txt --extra test pyproject.toml deploy/build.in
lock "-postgres" --constraint deploy/requirements-test.txt --extra test --extra postgres pyproject.toml deploy/build.in
