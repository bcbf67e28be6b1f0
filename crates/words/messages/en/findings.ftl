# Findings messages.
