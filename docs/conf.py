"""The pages of docs/ as a site: sphinx-build -b html docs SITE."""

from bot import __version__

project = "Afterplate"
author = "the Afterplate authors"
copyright = "2026, the Afterplate authors"  # noqa: A001  (Sphinx reads this name)
release = version = __version__

extensions = ["myst_parser"]
source_suffix = {".md": "markdown"}
root_doc = "index"
exclude_patterns = ["conf.py", "draw_rooms.py"]
myst_heading_anchors = 3

html_theme = "alabaster"
html_static_path = ["static"]
html_css_files = ["site.css"]
html_theme_options = {
    "description": "Paired glucose tests by text message",
    "fixed_sidebar": True,
    "show_relbars": True,
}
html_sidebars = {"**": ["about.html", "searchfield.html", "navigation.html"]}
html_show_sourcelink = False
html_copy_source = False
