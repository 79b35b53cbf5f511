"""The sender and the web process killed at every moment, and a provider that misbehaves: nothing lost or doubled."""
