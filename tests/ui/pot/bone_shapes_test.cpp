#include "ui/pot/bone_shapes.h"

#include <gtest/gtest.h>

namespace ladlework::ui {

TEST(BoneShapesTest, StayInsideTheirRoom) {
    for (const QSizeF& size : {QSizeF(400, 200), QSizeF(200, 30), QSizeF(120, 90)}) {
        const QRectF room(QPointF(10, 20), size);
        const QRectF bones = bonesIn(room, 60).boundingRect();
        EXPECT_TRUE(room.adjusted(-1, -size.height() * 0.1, 1, size.height() * 0.1).contains(bones))
            << size.width() << " x " << size.height();
        EXPECT_GT(bones.width(), size.width() * 0.6);
    }
}

TEST(BoneShapesTest, SamePotLooksTheSame) {
    const QRectF room(0, 0, 300, 100);
    EXPECT_EQ(bonesIn(room, 50), bonesIn(room, 50));
}

TEST(BoneShapesTest, NoRoomNoBones) {
    EXPECT_TRUE(bonesIn(QRectF(0, 0, 300, 1), 50).isEmpty());
    EXPECT_TRUE(bonesIn(QRectF(0, 0, 300, 100), 0).isEmpty());
}

} // namespace ladlework::ui
