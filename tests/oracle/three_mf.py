"""3MF, read in strict mode by lib3mf, the reference library of the 3MF Consortium."""

import io
import zipfile
from xml.sax.saxutils import quoteattr

import lib3mf
import numpy as np

_WRAPPER = None


def wrapper():
    global _WRAPPER
    _WRAPPER = _WRAPPER or lib3mf.get_wrapper()
    return _WRAPPER


def read(data):
    """`({object name: (corners, faces)}, faults)` of a 3MF file's bytes."""
    model = wrapper().CreateModel()
    reader = model.QueryReader("3mf")
    reader.SetStrictModeActive(True)
    try:
        reader.ReadFromBuffer(data)
    except lib3mf.ELib3MFException as refusal:
        return {}, [f"lib3mf: refuses the file: {refusal}"]
    faults = [f"lib3mf: warning {reader.GetWarning(i)}" for i in range(reader.GetWarningCount())]
    if model.GetUnit() != lib3mf.ModelUnit.MilliMeter:
        faults.append(f"lib3mf: unit {model.GetUnit()}, not the millimetre")
    meshes, built = {}, set()
    items = model.GetBuildItems()
    while items.MoveNext():
        built.add(items.GetCurrent().GetObjectResourceID())
    objects = model.GetMeshObjects()
    while objects.MoveNext():
        mesh = objects.GetCurrentMeshObject()
        name = mesh.GetName()
        if not mesh.IsValid():
            faults.append(f"lib3mf: object '{name}' is not valid")
        if not mesh.IsManifoldAndOriented():
            faults.append(f"lib3mf: object '{name}' is not manifold and oriented")
        if mesh.GetResourceID() not in built:
            faults.append(f"lib3mf: object '{name}' is not built")
        if name in meshes:
            faults.append(f"lib3mf: two objects are called '{name}'")
        corners = np.array([tuple(p.Coordinates) for p in mesh.GetVertices()], np.float32).reshape(-1, 3)
        faces = np.array([tuple(t.Indices) for t in mesh.GetTriangleIndices()], np.int64).reshape(-1, 3)
        meshes[name] = (corners, faces)
    return meshes, faults


def told(data):
    """`({object name: what it is printed in}, [attached text])` of a 3MF file's bytes."""
    model = wrapper().CreateModel()
    reader = model.QueryReader("3mf")
    reader.AddRelationToRead("urn:tubewright:design")
    reader.ReadFromBuffer(data)
    materials, objects = {}, model.GetMeshObjects()
    while objects.MoveNext():
        mesh = objects.GetCurrentMeshObject()
        group, index, has = mesh.GetObjectLevelProperty()
        materials[mesh.GetName()] = model.GetBaseMaterialGroupByID(group).GetName(index) if has else None
    texts = [bytes(model.GetAttachment(i).WriteToBuffer()).decode() for i in range(model.GetAttachmentCount())]
    return materials, texts


def write(meshes, unit="millimeter"):
    """Bytes of a least 3MF file with the named meshes, for the controls: every coordinate in full."""
    core = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02"
    package = "http://schemas.openxmlformats.org/package/2006"
    part = "application/vnd.ms-package.3dmanufacturing-3dmodel+xml"
    objects, items = [], []
    for number, (name, (corners, faces)) in enumerate(meshes.items(), 1):
        vertices = "".join('<vertex x="%s" y="%s" z="%s"/>' % tuple(map(str, p)) for p in corners)
        triangles = "".join('<triangle v1="%d" v2="%d" v3="%d"/>' % tuple(f) for f in faces)
        objects.append(f'<object id="{number}" type="model" name={quoteattr(name)}><mesh>'
                       f"<vertices>{vertices}</vertices><triangles>{triangles}</triangles></mesh></object>")
        items.append(f'<item objectid="{number}"/>')
    parts = {
        "[Content_Types].xml": f'<Types xmlns="{package}/content-types"><Default Extension="rels" ContentType='
                               f'"application/vnd.openxmlformats-package.relationships+xml"/>'
                               f'<Default Extension="model" ContentType="{part}"/></Types>',
        "_rels/.rels": f'<Relationships xmlns="{package}/relationships"><Relationship Id="model" '
                       f'Target="/3D/3dmodel.model" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/>'
                       f"</Relationships>",
        "3D/3dmodel.model": f'<model unit="{unit}" xmlns="{core}"><resources>{"".join(objects)}</resources>'
                            f'<build>{"".join(items)}</build></model>',
    }
    answer = io.BytesIO()
    with zipfile.ZipFile(answer, "w", zipfile.ZIP_DEFLATED) as package_file:
        for name, text in parts.items():
            package_file.writestr(name, '<?xml version="1.0" encoding="UTF-8"?>' + text)
    return answer.getvalue()
