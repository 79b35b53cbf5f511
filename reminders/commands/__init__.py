"""The commands of the outer contract, a thin module each: `configure(parser)` and `run(args)`."""
