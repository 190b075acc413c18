"""What an operator's monitor may know of a running bot: counts, waits and signs of life.

No label and no value here can hold personal data: labels are words of the program (kinds, ends,
parts, classes of errors), values are counts and seconds. `meter` is what the parts tell, and
forgets it at once; `prometheus` remembers it, and is loaded only where somebody asks for it;
`alive` says whether the parts still move; `endpoint` answers over HTTP. Stands just above the
logs, so that every adapter may tell it something; it knows none of them.
"""
