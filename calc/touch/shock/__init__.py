"""What current a voltage drives through a body, and what that does."""
