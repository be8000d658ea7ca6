"""What ezdxf makes of DXF files: for each, its version, units, faults, layers and entities, and points along each outline."""

import json
import sys

import ezdxf


def numbers(point):
    return [point.x, point.y]


def corners(entity):
    if entity.dxftype() == "LWPOLYLINE":
        return [[x, y, bulge] for x, y, bulge in entity.get_points("xyb")]
    return [[v.dxf.location.x, v.dxf.location.y, v.dxf.get("bulge", 0)] for v in entity.vertices]


def told(entity):
    kind = entity.dxftype()
    row = {"kind": kind, "layer": entity.dxf.layer}
    if kind == "LINE":
        row["points"] = [numbers(entity.dxf.start), numbers(entity.dxf.end)]
    elif kind == "CIRCLE":
        row.update(points=[numbers(entity.dxf.center)], radius=entity.dxf.radius)
    elif kind in ("LWPOLYLINE", "POLYLINE"):
        closed = entity.closed if kind == "LWPOLYLINE" else entity.is_closed
        row.update(corners=corners(entity), closed=bool(closed))
        # Arcs by ezdxf's own reading of bulges: centre and radius of each.
        arcs = []
        for part in entity.virtual_entities():
            if part.dxftype() == "ARC":
                arcs.append([part.dxf.center.x, part.dxf.center.y, part.dxf.radius,
                             (part.dxf.end_angle - part.dxf.start_angle) % 360])
        row["arcs"] = arcs
    elif kind == "SPLINE":
        tool = entity.construction_tool()
        row.update(
            points=[numbers(p) for p in tool.control_points],
            degree=entity.dxf.degree,
            knots=list(tool.knots()),
            along=[numbers(p) for p in tool.approximate(64)],
        )
    elif kind == "TEXT":
        row.update(text=entity.plain_text(), height=entity.dxf.height, rotation=entity.dxf.rotation,
                   halign=entity.dxf.halign, valign=entity.dxf.valign, points=[numbers(entity.dxf.align_point)])
    return row


def read(file):
    document = ezdxf.readfile(file)
    audit = document.audit()
    return {
        "version": document.dxfversion,
        "units": document.units,
        "metric": document.header.get("$MEASUREMENT", None),
        "faults": [str(e.message) for e in list(audit.errors) + list(audit.fixes)],
        "layers": {layer.dxf.name: layer.dxf.linetype for layer in document.layers},
        "lineTypes": [t.dxf.name for t in document.linetypes],
        "entities": [told(e) for e in document.modelspace()],
    }


print(json.dumps({file: read(file) for file in sys.argv[1:]}))
