"""The whole job at once: every bonding and grounding part of a service, transformer, generator or building."""
