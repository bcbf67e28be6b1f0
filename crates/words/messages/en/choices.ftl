# Choices messages.
