# What the chat platforms show outside of any conversation: the command menu, pointers, the desk's claim, forms.

platform-menu-begin = Start a set-up
platform-menu-where = Where am I?
platform-menu-help = What can I send?
platform-menu-person = Call the workshop
platform-menu-desk = Make this channel the workshop's desk
platform-menu-desk-code = The operator's code
platform-pointer = I only guide in private.
platform-open-chat = Open our chat
platform-written-privately = I wrote to you in private:
platform-not-taken = I could not note that. Send it again.
platform-type-reading = Type a reading
platform-reading-field = What the meter shows
platform-room-name = Your set-up
platform-case-name = Case { $case }
platform-desk-claimed = This is the desk now. Cases come here.
platform-desk-code-wrong = That code is wrong or used.
platform-desk-only-in-group = Say this in the workshop's own group or channel.
