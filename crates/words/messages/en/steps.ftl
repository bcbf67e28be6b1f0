# Steps messages.
