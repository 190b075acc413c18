"""The commands, one a file, loaded only when named.

Each module has NAME, HELP, `add_arguments(parser)` and `run(args) -> int`. A command turns
arguments into calls; it holds no rule of its own. What a person can mend is raised as
`bot.mendable.Mendable`.
"""
