"""The spec's JSON text, with comments, read into typed values.

`Keys` reads one object key by key: it refuses keys that are not known and
lengths outside what their key allows.
"""

import json

from lengths import Number, Refused, read_length_text, read_ratio_text

MAX_BYTES = 16 * 1024 * 1024


def strip_comments(text):
    """Blanks out // and /* */ comments that stand outside strings."""
    out, i, in_string = [], 0, False
    while i < len(text):
        pair = text[i : i + 2]
        if in_string:
            step = 2 if text[i] == "\\" else 1
            in_string = text[i] != '"'
            out.append(text[i : i + step])
        elif pair == "//":
            end = text.find("\n", i)
            step = (len(text) if end < 0 else end) - i
        elif pair == "/*":
            end = text.find("*/", i + 2)
            if end < 0:
                raise Refused("a comment is not closed")
            step = end + 2 - i
            out.append(" ")
        else:
            in_string = text[i] == '"'
            step = 1
            out.append(text[i])
        i += step
    return "".join(out)


def object_of(pairs):
    result = dict(pairs)
    if len(result) != len(pairs):
        raise Refused("a key is given twice")
    return result


def refuse_constant(text):
    raise Refused(f"{text} is not JSON")


def read_json(text):
    if len(text.encode()) > MAX_BYTES:
        raise Refused("the file is over 16 MiB")
    try:
        value = json.loads(
            strip_comments(text),
            parse_float=Number,
            parse_int=Number,
            parse_constant=refuse_constant,
            object_pairs_hook=object_of,
        )
    except (json.JSONDecodeError, RecursionError) as error:
        raise Refused(f"not JSON: {error}") from error
    if not isinstance(value, dict):
        raise Refused("a spec is an object")
    return value


class Keys:
    """One object of the spec, its path for messages and the spec's unit."""

    def __init__(self, value, path, unit, known):
        if not isinstance(value, dict):
            raise Refused(f"{path or '/'}: an object is wanted")
        for key in value:
            if key not in known:
                raise Refused(f"{path}/{key}: unknown key")
        self.value, self.path, self.unit = value, path, unit

    def __contains__(self, key):
        return key in self.value

    def child(self, key, known):
        return Keys(self.value.get(key, {}), f"{self.path}/{key}", self.unit, known)

    def length(self, key, default=None, zero=False, negative=False):
        if key not in self.value:
            return default
        return check_length(self.value[key], f"{self.path}/{key}", self.unit, zero, negative)

    def lengths(self, key):
        """A list of sizes, or None when the key is not given."""
        if key not in self.value:
            return None
        listed = self.value[key]
        if not isinstance(listed, list) or not listed:
            raise Refused(f"{self.path}/{key}: a list of lengths is wanted")
        return [check_length(v, f"{self.path}/{key}", self.unit) for v in listed]

    def choice(self, key, allowed, default=None):
        if key not in self.value:
            return default
        value = self.value[key]
        if isinstance(value, Number) or value not in allowed:
            raise Refused(f"{self.path}/{key}: {value!r} is not one of {', '.join(allowed)}")
        return value

    def text(self, key, default=None):
        value = self.value.get(key, default)
        if value is not None and (not isinstance(value, str) or isinstance(value, Number)):
            raise Refused(f"{self.path}/{key}: a text is wanted")
        return value

    def flag(self, key, default=None):
        value = self.value.get(key, default)
        if value is not None and not isinstance(value, bool):
            raise Refused(f"{self.path}/{key}: true or false is wanted")
        return value

    def ratio(self, key):
        return read_ratio_text(self.value[key]) if key in self.value else None


def check_length(value, path, unit, zero=False, negative=False):
    """A length that may be zero or negative only where its key allows it."""
    if not isinstance(value, str):
        raise Refused(f"{path}: a length is wanted")
    length = read_length_text(value, unit)
    if (length == 0 and not zero) or (length < 0 and not negative):
        raise Refused(f"{path}: {value} is too small")
    return length
