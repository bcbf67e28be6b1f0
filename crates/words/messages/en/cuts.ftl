# Cuts messages.
