#!/bin/sh
# Sets up what is missing, lives through the demo clinic's weeks and serves it. Options go to `reminders demo`:
# --once stops after the printed weekly digest.
set -eu
cd "$(dirname "$0")/.."
. deploy/setup.sh
set_up ""
exec .venv/bin/python -m reminders demo "$@"
