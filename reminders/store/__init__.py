"""The record: tables, the one way to write, and a function for each question asked of them."""
