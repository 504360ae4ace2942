#!/usr/bin/env python3
"""Makes demo/photo-26.jpg, an invented picture of test 26: a box of a gauge's size with its rod on brown ground, drawn, no real thing.

    python3 demo/make_photo.py          # writes it
    python3 demo/make_photo.py --check  # draws it again and compares the pixels; another JPEG library may round them by a few grey levels
"""
import random
import sys
from pathlib import Path

from PIL import Image, ImageChops, ImageDraw, ImageFilter, ImageStat

FILE = Path(__file__).resolve().parent / "photo-26.jpg"
WIDTH, HEIGHT = 640, 480


def ground():
    noise = random.Random(26)
    coarse = Image.new("RGB", (WIDTH // 8, HEIGHT // 8))
    for y in range(coarse.height):
        for x in range(coarse.width):
            light = noise.randint(-14, 14) + y // 3
            coarse.putpixel((x, y), (112 + light, 84 + light, 58 + light))
    picture = coarse.resize((WIDTH, HEIGHT), Image.BICUBIC)
    draw = ImageDraw.Draw(picture)
    for _ in range(260):  # clods, and the prints of a sheepsfoot drum in rows
        x, y, size = noise.randrange(WIDTH), noise.randrange(HEIGHT), noise.randint(2, 6)
        tone = noise.randint(-26, 20)
        draw.ellipse((x, y, x + 2 * size, y + size), fill=(108 + tone, 80 + tone, 55 + tone))
    for row in range(4):
        for print_ in range(9):
            x, y = 20 + print_ * 74 + row % 2 * 37, 40 + row * 30
            draw.rounded_rectangle((x, y, x + 26, y + 12), 4, fill=(84, 62, 43))
    return picture


def box(picture):
    shadow = Image.new("L", picture.size)
    ImageDraw.Draw(shadow).polygon([(214, 372), (440, 372), (520, 404), (300, 410)], fill=150)
    picture.paste((40, 30, 22), mask=shadow.filter(ImageFilter.GaussianBlur(9)))
    draw = ImageDraw.Draw(picture)
    draw.polygon([(206, 262), (246, 222), (446, 222), (426, 262)], fill=(226, 206, 150))   # top
    draw.polygon([(426, 262), (446, 222), (446, 336), (426, 384)], fill=(150, 128, 78))    # right side
    draw.rectangle((206, 262, 426, 384), fill=(196, 172, 112))                             # front
    draw.rectangle((226, 286, 330, 330), fill=(70, 78, 74))                                # a display, off
    for key in range(6):
        x, y = 350 + key % 3 * 22, 288 + key // 3 * 24
        draw.rectangle((x, y, x + 14, y + 14), fill=(96, 90, 70))
    draw.rectangle((392, 96, 404, 240), fill=(150, 152, 154))                              # rod, above the housing
    draw.rounded_rectangle((372, 78, 424, 100), 8, fill=(48, 48, 50))                      # its handle
    draw.ellipse((382, 232, 414, 246), fill=(92, 84, 62))


def drawn():
    picture = ground()
    box(picture)
    return picture.filter(ImageFilter.GaussianBlur(0.7))


if __name__ == "__main__":
    if sys.argv[1:] == ["--check"]:
        apart = ImageStat.Stat(ImageChops.difference(drawn(), Image.open(FILE).convert("RGB"))).mean
        if max(apart) > 3:
            sys.exit(f"{FILE} is another picture than the one drawn here: {apart} grey levels apart on the average")
    else:
        drawn().save(FILE, quality=82, optimize=True)
