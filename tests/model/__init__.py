"""Promises that hold whatever happens in whatever order, tried by a property-testing library's state machine."""
