"""Ways to reach a person, each behind the Channel protocol of the core."""
