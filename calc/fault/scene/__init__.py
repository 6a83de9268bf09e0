"""A drawn source, service, panel and machine, whose bonds can be taken away."""
