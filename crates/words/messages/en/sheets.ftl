# Sheets messages.
