"""Measured ratios, each side by side in one run: `python -m tests.benchmarks`, with --long in their full sizes."""
