# Drawings and tables of sections; stiffnesses from readings.
