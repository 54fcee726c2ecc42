package hearthcloth.colour;

/** Three rows of three: a linear change of what three numbers stand for. */
record Matrix(Row first, Row second, Row third) {

    /** Three numbers, as a row or as what a matrix is applied to. */
    record Row(double x, double y, double z) {

        double dot(Row other) {
            return x * other.x + y * other.y + z * other.z;
        }

        Row cross(Row other) {
            return new Row(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
        }

        Row plus(double each) {
            return new Row(x + each, y + each, z + each);
        }

        Row times(double factor) {
            return new Row(x * factor, y * factor, z * factor);
        }

        Row over(double divisor) {
            return new Row(x / divisor, y / divisor, z / divisor);
        }
    }

    Row times(Row column) {
        return new Row(first.dot(column), second.dot(column), third.dot(column));
    }

    /** The matrix that undoes this one: the adjugate over the determinant. */
    Matrix inverted() {
        Row p = second.cross(third);
        Row q = third.cross(first);
        Row r = first.cross(second);
        double determinant = first.dot(p);
        return new Matrix(
                new Row(p.x, q.x, r.x).over(determinant),
                new Row(p.y, q.y, r.y).over(determinant),
                new Row(p.z, q.z, r.z).over(determinant));
    }
}
