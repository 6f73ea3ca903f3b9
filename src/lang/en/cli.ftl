# The command line.
