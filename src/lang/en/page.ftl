# The local page. Keys begin with `page-`.
