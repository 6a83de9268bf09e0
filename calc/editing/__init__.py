"""For contributors: adds an edition, lists what an owner of a book must read, and tells which answers changed.

The only part of calc that knows the tree of the handbook, and the only one that writes. No page carries it.
"""
