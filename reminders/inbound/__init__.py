"""What comes from outside, turned into plain values: the SMS provider's forms and mail."""
